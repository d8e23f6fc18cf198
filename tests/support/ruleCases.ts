/** For every rule that ships: rows that break it, and rows that just do not. */
import type { MeasureId } from '../../src/session/record/measures';
import type { HandRow } from './records';

export interface Case {
  readonly broken: readonly HandRow[];
  readonly kept: readonly HandRow[];
  readonly brokenBy?: Partial<Record<MeasureId, number>>;
  readonly keptBy?: Partial<Record<MeasureId, number>>;
  /** Further ways to break it, and to just not. */
  readonly others?: readonly Pick<Case, 'broken' | 'kept'>[];
}

export const ON = 1;
export const at = (
  step: number,
  set: HandRow['set'] = {},
  ...events: NonNullable<HandRow['events']>
): HandRow => ({
  step,
  set,
  events,
});
export const ev = (id: string, subject?: string) => (subject === undefined ? { id } : { id, subject });
export const open = ev('coupler-opened', 'charging');
const coupled = ev('coupled', 'charging');
export const low = ev('can-open-to', 'low');
export const charged = { 'decision.stop-charging': ON, 'cans.netIntoLoopKg': 0.48, 'vent.airflowRatio': 1 };
export const running = { 'engine.rpm': 1500, 'ac.on': ON };
const mended = { 'part.fan.replaced': ON, 'highSide.gaugePressurePa': 1_500_000, 'vent.airflowRatio': 1 };
const turning = { ...running, 'clutch.turning': ON };

/** A joint of the loop undone with pressure behind it, and with none. */
const UNDONE: Pick<Case, 'broken' | 'kept'> = {
  broken: [at(0), at(10, {}, ev('loop-opened', 'drier'), ev('opened-under-pressure', 'drier'))],
  kept: [at(0), at(10, {}, ev('loop-opened', 'drier'))],
};

export const cases: Readonly<Record<string, Case>> = {
  // The same coupler, opened without goggles: at 21 kPa it is a joint under pressure, at 20 kPa it is not yet one.
  eyes: {
    broken: [at(0), at(10, { 'lowSide.gaugePressurePa': 21_000, 'highSide.gaugePressurePa': 0 }, open)],
    kept: [at(0), at(10, { 'lowSide.gaugePressurePa': 20_000, 'highSide.gaugePressurePa': 0 }, open)],
    others: [UNDONE],
  },
  hands: {
    broken: [at(0), at(10, {}, ev('uncoupled', 'charging'), ev('sprayed', 'port-b'))],
    kept: [at(0), at(10, {}, ev('uncoupled', 'charging'))],
    others: [UNDONE],
  },
  // Behind a shut door at once; behind an open one where the fumes stay all the same.
  aired: {
    broken: [at(0), at(10, { 'engine.rpm': 800, 'exhaust.inShutRoom': ON }), at(20, { 'door.open': ON })],
    kept: [at(0), at(10, { 'door.open': ON }), at(20, { 'engine.rpm': 800 })],
    others: [
      {
        broken: [at(0, { 'engine.rpm': 800 }), at(10, { 'place.coPpm': 200.1 })],
        kept: [at(0, { 'engine.rpm': 800 }), at(10, { 'place.coPpm': 200 })],
      },
    ],
  },
  hoseClear: {
    broken: [at(0, { 'hose.charging.coupled': ON }), at(10, running, ev('hose-in-zone', 'fan'))],
    kept: [at(0, { 'hose.charging.coupled': ON }, ev('hose-in-zone', 'fan')), at(10, running)],
  },
  caught: {
    broken: [at(0, { 'hose.charging.coupled': ON }), at(10, running), at(35, { 'hose.charging.caught': ON })],
    kept: [at(0, { 'hose.charging.coupled': ON }), at(10, running), at(35)],
  },
  canOnHigh: { broken: [at(0), at(10, {}, ev('can-open-to', 'high'))], kept: [at(0), at(10, {}, low)] },
  vented: {
    broken: [at(0, {}, open)],
    brokenBy: { 'vented.kg': 0.0605 },
    kept: [at(0, {}, open)],
    keptBy: { 'vented.kg': 0.008 },
  },
  relief: {
    broken: [at(0, running), at(10, {}, ev('relief-opened'))],
    kept: [at(0, running), at(10, {}, ev('high-pressure-trip'))],
  },
  papersRead: {
    broken: [at(0), at(10, {}, coupled), at(20, { 'sheet.label.read': ON })],
    kept: [at(0), at(10, { 'sheet.label.read': ON }, coupled)],
  },
  portTraced: {
    broken: [at(0), at(10, {}, coupled), at(20, { 'port.port-b.traced': ON })],
    kept: [at(0, { 'port.port-b.traced': ON }), at(10, {}, coupled)],
  },
  portsRight: {
    broken: [at(0)],
    brokenBy: { 'ports.wrongCount': 1 },
    kept: [at(0)],
    keptBy: { 'ports.wrongCount': 0 },
  },
  engineOff: {
    broken: [at(0, { 'engine.rpm': 600 }, coupled)],
    kept: [at(0, {}, coupled), at(1, { 'engine.rpm': 600 })],
  },
  gaugeZeroed: {
    broken: [at(0), at(10, {}, open), at(20, {}, ev('gauge-zeroed'))],
    kept: [at(0, {}, ev('gauge-zeroed')), at(10, {}, open)],
  },
  pinOut: {
    broken: [at(0, {}, ev('uncoupled'), ev('sprayed'))],
    kept: [at(0, {}, ev('uncoupled'))],
  },
  capsOn: {
    broken: [at(0, {}, ev('cap-off', 'port-b'))],
    brokenBy: { 'caps.offCount': 1 },
    kept: [at(0, {}, ev('cap-off', 'port-b'))],
  },
  hosesOff: { broken: [at(0, {}, coupled)], brokenBy: { 'hoses.leftCount': 1 }, kept: [at(0, {}, coupled)] },
  readShut: {
    broken: [at(0, { 'can.can-1.valveSixteenths': 1 }, ev('noted', 'charging-gauge'))],
    kept: [
      at(0, { 'can.can-1.valveSixteenths': 1 }, ev('noted', 'scale')),
      at(1, { 'can.can-1.valveSixteenths': 0 }, ev('noted', 'charging-gauge')),
    ],
  },
  readTurning: {
    broken: [at(0, running, ev('noted', 'low-gauge'))],
    kept: [
      at(0, { ...running, 'clutch.turning': ON }, ev('noted', 'low-gauge')),
      at(10, { 'clutch.turning': 0 }, ev('noted', 'scale')),
    ],
  },
  causesFew: {
    broken: [at(0, {}, ev('diagnosed'))],
    brokenBy: { 'cause.guessedCount': 1 },
    kept: [at(0, {}, ev('diagnosed'))],
  },
  oneMind: {
    broken: [at(0, {}, ev('decided'))],
    brokenBy: { 'decisions.takenBackCount': 1 },
    kept: [at(0, {}, ev('decided'))],
  },
  causeRight: {
    broken: [at(0)],
    brokenBy: { 'diagnosis.right': 0.4 },
    kept: [at(0)],
    keptBy: { 'diagnosis.right': 1 },
  },
  partsRight: {
    broken: [at(0, {}, ev('diagnosed'))],
    brokenBy: { 'parts.wrongCount': 1 },
    kept: [at(0, {}, ev('diagnosed'))],
  },
  scaleFirst: {
    broken: [at(0), at(10, {}, low), at(20, {}, ev('noted', 'scale'))],
    kept: [at(0, {}, ev('noted', 'scale')), at(10, {}, low)],
  },
  hosePurged: {
    broken: [at(0), at(10, {}, low)],
    kept: [at(0, {}, ev('purge-opened')), at(10, {}, low)],
  },
  noLiquid: {
    broken: [at(0, {}, low)],
    brokenBy: { 'slugged.kg': 0.0041 },
    kept: [at(0, {}, low)],
    keptBy: { 'slugged.kg': 0.004 },
  },
  chargeWeighed: {
    broken: [at(0, {}, low)],
    brokenBy: { 'charge.errorKg': 0.0201 },
    kept: [at(0, {}, low)],
    keptBy: { 'charge.errorKg': 0.02 },
  },
  saidCharge: {
    broken: [at(0, {}, ev('decided', 'refer')), at(10, {}, low)],
    kept: [at(0, {}, ev('decided', 'charge')), at(10, {}, low)],
  },
  saidStop: {
    broken: [at(0, {}, low), at(10, {}, ev('decided', 'charge'))],
    kept: [at(0, {}, low), at(10, charged, ev('decided', 'stop-charging'))],
  },
  stopMeant: {
    broken: [at(0, charged, ev('decided', 'stop-charging')), at(10, {}, ev('can-opened', 'can-1'))],
    kept: [at(0, {}, ev('can-opened', 'can-1')), at(10, charged, ev('decided', 'stop-charging'))],
  },
  labelWritten: {
    broken: [at(0, {}, ev('labelled'))],
    brokenBy: { 'label.errorKg': 0.026 },
    kept: [at(0, {}, ev('labelled'))],
    keptBy: { 'label.errorKg': 0.025 },
  },
  // Fifty-nine seconds of cold are not a minute.
  provedCold: {
    broken: [
      at(0, { ...running, ...charged, 'vent.temperatureK': 287 }),
      at(2950, {}),
      at(2951, { 'vent.temperatureK': 289 }),
    ],
    kept: [
      at(0, { ...running, ...charged, 'vent.temperatureK': 287 }),
      at(2999),
      at(3000),
      at(3001, { 'vent.temperatureK': 289 }),
    ],
  },
  provedNoted: {
    broken: [at(0, { ...charged, 'probe.air.centre-vent': ON }, ev('noted', 'air'))],
    kept: [at(0, { ...charged, 'probe.air.centre-vent': ON, 'clutch.turning': ON }, ev('noted', 'air'))],
  },
  nothingAdded: {
    broken: [at(0, {}, ev('decided', 'do-not-charge')), at(10, { 'cans.netIntoLoopKg': 0.0051 })],
    kept: [at(0, {}, ev('decided', 'do-not-charge')), at(10, { 'cans.netIntoLoopKg': 0.005 })],
  },
  saidNo: {
    broken: [
      at(0, { 'decision.do-not-charge': ON }),
      at(10, { 'decision.do-not-charge': 0 }, ev('finished')),
    ],
    kept: [at(0, { 'decision.do-not-charge': ON }), at(10, {}, ev('finished'))],
  },
  neverCharge: {
    broken: [at(0, {}, ev('decided', 'charge')), at(10, {}, ev('decided', 'do-not-charge'))],
    kept: [at(0, {}, ev('decided', 'do-not-charge'))],
  },
  decidedOnReadings: {
    broken: [at(0, running, ev('noted', 'high-gauge')), at(10, {}, ev('decided', 'do-not-charge'))],
    kept: [at(0, turning, ev('noted', 'high-gauge')), at(10, {}, ev('decided', 'do-not-charge'))],
  },
  // A look is enough; a paper that was read is none, and neither is sending the car on.
  readFirst: {
    broken: [
      at(0, {}, ev('decided', 'refer')),
      at(5, {}, ev('diagnosed', 'condenser-fan-dead')),
      at(10, {}, ev('looked', 'fan')),
    ],
    kept: [at(0, {}, ev('looked', 'fan')), at(10, {}, ev('diagnosed', 'condenser-fan-dead'))],
  },
  namedOnReadings: {
    broken: [at(0, {}, ev('replaced', 'fan')), at(10, turning, ev('noted', 'high-gauge'))],
    kept: [at(0, turning, ev('noted', 'high-gauge')), at(10, {}, ev('diagnosed', 'condenser-fan-dead'))],
  },
  chargeKept: {
    broken: [at(0, {}, ev('decided', 'do-not-charge'))],
    brokenBy: { 'charge.errorKg': 0.031 },
    kept: [at(0, {}, ev('decided', 'do-not-charge'))],
    keptBy: { 'charge.errorKg': 0.03 },
  },
  highRead: {
    broken: [at(0, {}, ev('noted', 'high-gauge')), at(10, running)],
    kept: [at(0, running, ev('noted', 'high-gauge'))],
  },
  repaired: {
    broken: [at(0, {}, ev('diagnosed'))],
    kept: [at(0, {}, ev('diagnosed')), at(10, {}, ev('replaced', 'fan'))],
  },
  fanSeen: {
    broken: [at(0, {}, ev('looked', 'fan')), at(10, turning, ev('replaced', 'fan'))],
    kept: [at(0, turning, ev('looked', 'fan')), at(10, {}, ev('diagnosed', 'condenser-fan-dead'))],
  },
  // Three minutes less a step; or with the clutch out, or with the blower off.
  provedAtIdle: {
    broken: [
      at(0, { ...turning, ...mended }),
      at(8999),
      at(9000, { 'highSide.gaugePressurePa': 1_900_000 }),
      at(9001, { 'highSide.gaugePressurePa': 1_500_000, 'clutch.turning': 0 }),
      at(20_000, { 'clutch.turning': ON, 'vent.airflowRatio': 0 }),
      at(30_000),
    ],
    kept: [at(0, { ...turning, ...mended }), at(8999), at(9000)],
  },
};
