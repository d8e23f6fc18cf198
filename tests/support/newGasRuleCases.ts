/** Rows for the rules that lessons on the newer cars add, and the one with sealer: what breaks each, and what just does not. */
import { at, type Case, ev, ON } from './ruleCases';

const cold = { 'ac.on': ON, 'clutch.turning': ON };
const parked = {
  ...cold,
  'vent.airflowRatio': 1,
  'part.fan-relay.replaced': ON,
  'highSide.gaugePressurePa': 1_699_000,
};
const coupled = ev('coupled', 'gauge-low');
const tank = ev('tank-open-to', 'high');
const machine = (done: string) => ev(`device-${done}`, 'recovery-machine');
const fan = ev('looked', 'fan');

export const newGasCases: Readonly<Record<string, Case>> = {
  bothTraced: {
    broken: [at(0, { 'port.port-b.traced': ON }), at(10, {}, coupled), at(20, { 'port.port-a.traced': ON })],
    kept: [at(0, { 'port.port-b.traced': ON }), at(9, { 'port.port-a.traced': ON }), at(10, {}, coupled)],
  },
  canReadFirst: {
    broken: [at(0, { 'sheet.label.read': ON }), at(10, {}, ev('decided', 'refer'))],
    kept: [at(0, { 'sheet.label.read': ON, 'sheet.can-back.read': ON }), at(10, {}, ev('decided', 'refer'))],
    others: [
      {
        broken: [at(0, { 'sheet.can-back.read': ON }), at(10, {}, ev('can-opened', 'can-1'))],
        kept: [at(0, { 'sheet.label.read': ON, 'sheet.can-back.read': ON }), at(10, {}, ev('can-opened'))],
      },
    ],
  },
  leakSought: {
    broken: [at(0, {}, ev('noted', 'air')), at(10, {}, ev('diagnosed'))],
    kept: [at(0, {}, ev('noted', 'detector')), at(10, {}, ev('diagnosed'))],
  },
  coldMeasured: {
    broken: [at(0, { 'probe.air.centre-vent': ON }, ev('noted', 'air')), at(10, {}, ev('decided', 'refer'))],
    kept: [
      at(0, { 'probe.air.centre-vent': ON, 'ac.on': ON }, ev('noted', 'air')),
      at(10, {}, ev('decided', 'refer')),
    ],
  },
  // A fan that runs when it is looked at is not yet one that stood, and the other way round.
  fanSeenStanding: {
    broken: [at(0, { ...cold, 'fan.fan.turning': ON }, fan), at(10, {}, ev('decided', 'do-not-charge'))],
    kept: [at(0, cold, fan), at(10, {}, ev('decided', 'do-not-charge'))],
  },
  fanSeenRunning: {
    broken: [at(0, cold, fan), at(10, {}, ev('diagnosed'))],
    kept: [at(0, { ...cold, 'fan.fan.turning': ON }, fan), at(10, {}, ev('diagnosed'))],
  },
  highReadRunning: {
    broken: [at(0, { 'ac.on': ON }, ev('noted', 'high-gauge')), at(10, {}, ev('diagnosed'))],
    kept: [at(0, cold, ev('noted', 'high-gauge')), at(10, {}, ev('diagnosed'))],
  },
  // Three minutes less a step.
  provedStanding: {
    broken: [at(0, parked), at(8999, { 'highSide.gaugePressurePa': 1_700_000 }), at(9000)],
    kept: [at(0, parked), at(8999), at(9000)],
  },
  leakFoundFirst: {
    broken: [at(0, {}, ev('noted', 'soap')), at(10, {}, machine('started'))],
    kept: [at(0, {}, ev('noted', 'detector')), at(10, {}, machine('started'))],
  },
  holeMended: {
    broken: [at(0, {}, ev('replaced', 'drier')), at(10, {}, tank)],
    kept: [at(0, {}, ev('replaced', 'condenser')), at(10, {}, tank)],
  },
  sealerKnown: {
    broken: [at(0, {}, ev('sealer-test-begun', 'port-b')), at(10, {}, machine('attached'))],
    kept: [at(0, {}, ev('sealer-tested', 'port-b')), at(10, {}, machine('attached'))],
  },
  machineKeptOff: {
    broken: [at(0, {}, ev('sealer-tested', 'port-b')), at(10, {}, machine('started'))],
    kept: [at(0, {}, ev('sealer-tested', 'port-b')), at(10, {}, machine('attached'))],
  },
  drainSought: {
    broken: [at(0, {}, ev('sniffed', 'condenser')), at(10, {}, ev('diagnosed'))],
    kept: [at(0, {}, ev('sniffed', 'evaporator-drain')), at(10, {}, ev('diagnosed'))],
  },
  sentOnKnown: {
    broken: [at(0, { 'decision.do-not-charge': ON }), at(10, {}, ev('finished'))],
    kept: [at(0, { 'decision.refer': ON }), at(10, {}, ev('finished'))],
  },
};
