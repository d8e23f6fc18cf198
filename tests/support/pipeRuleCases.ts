/** Rows for the rules of lessons told by feeling the pipes: what breaks each, and what just does not. */
import { at, type Case, ev, ON } from './ruleCases';

const cooling = { 'engine.rpm': 1500, 'ac.on': ON };
const turning = { ...cooling, 'clutch.turning': ON };
const line = ev('noted', 'line');
const diagnosed = ev('diagnosed');

/** Measured with the clutch let go, and with the compressor turning. */
const measured = (place: string): Case => ({
  broken: [at(0, { ...cooling, [`probe.line.${place}`]: ON }, line), at(10, {}, diagnosed)],
  kept: [at(0, { ...turning, [`probe.line.${place}`]: ON }, line), at(10, {}, diagnosed)],
});

/** The same at 1000 rpm, and a little faster. */
const measuredAtWork = (place: string, then: ReturnType<typeof ev>): Pick<Case, 'broken' | 'kept'> => ({
  broken: [
    at(0, { ...cooling, 'engine.rpm': 1000, [`probe.line.${place}`]: ON }, line),
    at(10, { 'engine.rpm': 1500 }, then),
  ],
  kept: [at(0, { ...cooling, 'engine.rpm': 1001, [`probe.line.${place}`]: ON }, line), at(10, {}, then)],
});

export const pipeCases: Readonly<Record<string, Case>> = {
  beforeFelt: measured('drier'),
  behindFelt: measured('liquid'),
  farEndFelt: measured('liquid-end'),
  dischargeRead: measured('discharge'),
  liquidLineRead: measured('liquid'),
  liquidEndRead: measured('liquid-end'),
  suctionRead: {
    ...measured('suction'),
    others: [
      {
        broken: [at(0, turning, line), at(10, { 'probe.line.suction': ON }, ev('decided', 'charge'))],
        kept: [at(0, { ...turning, 'probe.line.suction': ON }, line), at(10, {}, ev('decided', 'charge'))],
      },
    ],
  },
  liquidCold: {
    broken: [at(0, { 'engine.rpm': 600, 'probe.line.liquid': ON }, line), at(10, {}, diagnosed)],
    kept: [at(0, { 'engine.rpm': 601, 'probe.line.liquid': ON }, line), at(10, {}, diagnosed)],
  },
  'click-click/coilFedSeen': {
    ...measuredAtWork('accumulator', ev('replaced', 'cycling-switch')),
    others: [measuredAtWork('suction', diagnosed)],
  },
  // A part that goes in is no name yet.
  'kerb-strike/coilFedSeen': {
    ...measuredAtWork('accumulator', diagnosed),
    others: [
      {
        broken: [at(0, {}, ev('replaced', 'orifice')), at(10, {}, diagnosed)],
        kept: [
          at(0, {}, ev('replaced', 'orifice')),
          at(5, { ...cooling, 'probe.line.suction': ON }, line),
          at(10, {}, diagnosed),
        ],
      },
    ],
  },
  hissHeard: {
    broken: [at(0, cooling, ev('looked', 'orifice')), at(10, {}, ev('decided', 'do-not-charge'))],
    kept: [at(0, turning, ev('looked', 'orifice')), at(10, {}, ev('decided', 'do-not-charge'))],
  },
  tripSeen: {
    broken: [at(0, {}, ev('noted', 'high-gauge')), at(10, { highPressureTrips: 1 }, diagnosed)],
    kept: [at(0, { highPressureTrips: 1 }, ev('noted', 'high-gauge')), at(10, {}, diagnosed)],
  },
  // As low as the air outside is not yet under it.
  vacuumSeen: {
    broken: [
      at(0, { ...turning, 'lowSide.gaugePressurePa': 0 }, ev('noted', 'low-gauge')),
      at(10, {}, diagnosed),
    ],
    kept: [
      at(0, { ...turning, 'lowSide.gaugePressurePa': -1 }, ev('noted', 'low-gauge')),
      at(10, {}, diagnosed),
    ],
  },
  // Four minutes less a step; or with a window open; or before it was said to stop.
  provedShut: {
    broken: [
      at(0, { ...cooling, 'vent.airflowRatio': 1, 'vent.temperatureK': 287 }),
      at(20_000, { 'decision.stop-charging': ON, 'windows.open': ON }),
      at(40_000, { 'windows.open': 0 }),
      at(51_999, { 'vent.temperatureK': 287.2 }),
    ],
    kept: [
      at(0, { ...cooling, 'vent.airflowRatio': 1, 'vent.temperatureK': 287, 'decision.stop-charging': ON }),
      at(12_000),
    ],
  },
};
