/** Rows for the rules of lessons on what is in a loop, and on what goes in: what breaks each, and what just does not. */
import { at, type Case, ev, low, ON, open } from './ruleCases';

const tank = ev('tank-open-to', 'high');
const recovery = ev('device-started', 'recovery-machine');
const sampled = ev('sample-identified');
const intoHigh = ev('can-open-to', 'high');

/** Done a moment after it, and a moment before. */
const first = (done: ReturnType<typeof ev>, then: ReturnType<typeof ev>): Case => ({
  broken: [at(0, {}, then), at(10, {}, done)],
  kept: [at(0, {}, done), at(10, {}, then)],
});

/** Known what it holds: then something is done that is not to be, or something nobody forbids here. */
const leftAlone = (done: ReturnType<typeof ev>, allowed: ReturnType<typeof ev>) => ({
  broken: [at(0, {}, sampled), at(10, {}, done)],
  kept: [at(0, {}, sampled), at(10, {}, allowed)],
});

/** Switched on together at `pressurePa`; the other side says nothing about it. */
const together = (side: string, pressurePa: number) => [
  at(0, {
    'engine.rpm': 800,
    'lowSide.gaugePressurePa': 0,
    'highSide.gaugePressurePa': 0,
    [`${side}.gaugePressurePa`]: pressurePa,
  }),
  at(10, { 'ac.on': ON }, ev('ac-on')),
];

export const inLoopCases: Readonly<Record<string, Case>> = {
  'from-twelve/leakBeforeGas': {
    broken: [at(0, { 'part.discharge-condenser.replaced': ON }), at(10, {}, low)],
    kept: [at(0, { 'part.discharge-condenser.replaced': ON, 'cause.leak-joint.named': ON }), at(10, {}, low)],
  },
  'same-needle-short/leakBeforeGas': first(ev('replaced', 'suction'), tank),
  'exam-in-a-hurry/leakBeforeGas': {
    ...first(ev('replaced', 'rear-liquid-tee'), tank),
    others: [first(ev('replaced', 'rear-liquid-tee'), low)],
  },
  'the-rear-unit/leakBeforeGas': {
    ...first(ev('replaced', 'evaporator'), tank),
    others: [first(ev('replaced', 'evaporator'), low)],
  },
  // On the wrong side it is the can on the high side that counts, and no question of the bill.
  'weighed-in/leakMended': {
    broken: [at(0), at(10, {}, low), at(20, { 'sheet.repair-bill.read': ON })],
    kept: [at(0, {}, intoHigh), at(5, { 'sheet.repair-bill.read': ON }), at(10, {}, low)],
  },
  'drill-can-on-high/leakMended': {
    broken: [at(0, {}, intoHigh), at(5, { 'sheet.repair-bill.read': ON }), at(10, {}, low)],
    kept: [at(0, { 'sheet.repair-bill.read': ON }), at(10, {}, intoHigh)],
  },
  'weighed-in/startAfterCutIn': {
    broken: together('highSide', 219_000),
    kept: together('highSide', 220_000),
  },
  'drill-can-on-high/startAfterCutIn': {
    broken: together('lowSide', 286_000),
    kept: together('lowSide', 287_000),
  },
  gasKnownFirst: {
    broken: [at(0, {}, ev('sample-started')), at(10, {}, ev('decided', 'refer')), at(20, {}, sampled)],
    kept: [at(0, {}, sampled), at(10, {}, ev('decided', 'refer'))],
  },
  doorBeforeSample: {
    broken: [at(0, {}, ev('sample-started')), at(1, { 'door.open': ON })],
    kept: [at(0, { 'door.open': ON }, ev('sample-started'))],
    others: [
      {
        broken: [at(0, {}, open), at(1, { 'door.open': ON })],
        kept: [at(0, { 'door.open': ON }, open)],
      },
    ],
  },
  'no-label-at-all/leftAlone': {
    ...leftAlone(low, tank),
    others: [leftAlone(ev('loop-opened', 'drier'), recovery)],
  },
  'the-label-lies/leftAlone': {
    ...leftAlone(recovery, ev('device-attached', 'recovery-machine')),
    others: [
      leftAlone(ev('device-started', 'vacuum-pump'), low),
      leftAlone(tank, low),
      leftAlone(ev('loop-opened', 'drier'), low),
    ],
  },
  referredOn: {
    broken: [at(0, { 'decision.refer': ON }), at(10, { 'decision.refer': 0 }, ev('finished'))],
    kept: [at(0), at(10, { 'decision.refer': ON }, ev('finished'))],
  },
  oilAsked: {
    broken: [at(0, { 'owner.used.asked': ON }), at(10, {}, ev('diagnosed'))],
    kept: [at(0, { 'owner.used.asked': ON, 'owner.filled.asked': ON }), at(10, {}, ev('diagnosed'))],
  },
  weightHistory: {
    broken: [at(0), at(10, {}, ev('decided', 'refer')), at(20, { 'sheet.workshop-bill.read': ON })],
    kept: [at(0, { 'sheet.workshop-bill.read': ON }), at(10, {}, ev('decided', 'refer'))],
  },
  weighedOut: {
    ...first(ev('licensed-recovered'), ev('diagnosed')),
    others: [first(ev('licensed-recovered'), ev('replaced', 'expansion-valve'))],
  },
  notAsItIs: {
    ...first(ev('decided', 'do-not-charge'), recovery),
    others: [first(ev('decided', 'do-not-charge'), tank)],
  },
  drierBeforeGas: first(ev('replaced', 'drier'), tank),
  // At the other port it proves nothing.
  capGoneSeen: {
    broken: [at(0, {}, ev('sniffed', 'port-b')), at(10, {}, recovery)],
    kept: [at(0, {}, ev('sniffed', 'port-a')), at(10, {}, recovery)],
    others: [first(ev('soaped', 'port-a'), tank), first(ev('soaped', 'port-a'), ev('loop-opened', 'port-a'))],
  },
  coreRenewed: first(ev('replaced', 'port-a'), tank),
};
