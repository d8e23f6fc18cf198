/** Rows for the rules that lessons on the van add: what breaks each, and what just does not. */
import { at, type Case, ev, low, ON, running } from './ruleCases';

const blown = { ...running, 'vent.airflowRatio': 1 };
const recirculated = { ...blown, 'air.recirculated': ON };
const hot = { ...blown, 'coolant.temperatureK': 334 };
const turning = { ...running, 'clutch.turning': ON };
const atAccumulator = { ...turning, 'probe.line.accumulator': ON };
const atCoil = { ...turning, 'probe.air.coil-outlet': ON };
const tank = ev('tank-open-to', 'high');

export const vanCases: Readonly<Record<string, Case>> = {
  // A minute less a step; or with a window open.
  driedAir: {
    broken: [
      at(0, { ...recirculated, 'vent.temperatureK': 287 }),
      at(2999, { 'vent.temperatureK': 288 }),
      at(3000, { 'vent.temperatureK': 287, 'windows.open': ON }),
      at(9000),
    ],
    kept: [at(0, { ...recirculated, 'vent.temperatureK': 287 }), at(2999), at(3000)],
  },
  fanBeforeGas: {
    broken: [at(0, {}, tank), at(10, {}, ev('replaced', 'fan-relay'))],
    kept: [at(0, {}, ev('replaced', 'fan-relay')), at(10, {}, tank)],
    others: [
      {
        broken: [at(0, {}, ev('replaced', 'blower')), at(10, {}, low)],
        kept: [at(0, {}, ev('replaced', 'fan')), at(10, {}, low)],
      },
    ],
  },
  revved: {
    broken: [
      at(0, { ...turning, 'engine.rpm': 2000 }, ev('noted', 'high-gauge')),
      at(10, { 'engine.rpm': 2500, 'clutch.turning': 0 }, ev('noted', 'high-gauge')),
      at(20, {}, ev('diagnosed')),
    ],
    kept: [at(0, { ...turning, 'engine.rpm': 2001 }, ev('noted', 'high-gauge')), at(10, {}, ev('diagnosed'))],
  },
  saidSentOn: {
    broken: [at(0, { 'decision.do-not-charge': ON }), at(10, {}, ev('finished'))],
    kept: [at(0, { 'decision.refer': ON }), at(10, {}, ev('finished'))],
  },
  besideCoil: {
    broken: [at(0, turning, ev('noted', 'air')), at(10, {}, ev('replaced', 'blend-door'))],
    kept: [at(0, atCoil, ev('noted', 'air')), at(10, {}, ev('replaced', 'blend-door'))],
  },
  // Two minutes less a step; or before the coolant is hot.
  coldInFront: {
    broken: [
      at(0, { ...hot, 'vent.temperatureK': 287 }),
      at(5999, { 'vent.temperatureK': 288 }),
      at(6000, { 'vent.temperatureK': 287, 'coolant.temperatureK': 333 }),
      at(20_000),
    ],
    kept: [at(0, { ...hot, 'vent.temperatureK': 287 }), at(5999), at(6000)],
  },
  drainSniffed: {
    broken: [at(0, {}, ev('detector-ticked', 'condenser')), at(10, {}, ev('loop-opened', 'evaporator'))],
    kept: [at(0, {}, ev('detector-ticked', 'evaporator-drain')), at(10, {}, ev('loop-opened', 'evaporator'))],
    others: [
      {
        broken: [at(0), at(10, {}, ev('loop-opened', 'evaporator'))],
        kept: [at(0, {}, ev('detector-ticked', 'centre-vent')), at(10, {}, ev('loop-opened', 'evaporator'))],
      },
    ],
  },
  pipesFelt: {
    broken: [
      at(0, { ...atAccumulator, 'clutch.turning': 0 }, ev('noted', 'line')),
      at(10, {}, ev('diagnosed')),
    ],
    kept: [at(0, atAccumulator, ev('noted', 'line')), at(10, {}, ev('diagnosed'))],
  },
};
