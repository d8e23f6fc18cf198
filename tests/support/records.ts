/** A record written by hand, row by row: what a rule is tested on. Signals keep their value until a row changes them. */
import type { PlantEvent } from '../../src/plant/commandSpecs';
import type { SignalSpec } from '../../src/plant/signalTypes';
import { type MeasureId, measureList } from '../../src/session/record/measures';
import type { RecordedEvent, SessionRecord } from '../../src/session/record/record';

export interface HandRow {
  readonly step: number;
  readonly set?: Readonly<Record<string, number>>;
  readonly events?: readonly PlantEvent[];
}

/** A car at rest with caps on and nothing connected; pressures in Pa, as everywhere. */
const AT_REST: readonly (readonly [id: string, unit: string, value: number])[] = [
  ['engine.rpm', 'rpm', 0],
  ['clutch.turning', 'bool', 0],
  ['ac.on', 'bool', 0],
  ['door.open', 'bool', 0],
  ['gear.goggles', 'bool', 0],
  ['gear.gloves', 'bool', 0],
  ['cap.port-a.on', 'bool', 1],
  ['cap.port-b.on', 'bool', 1],
  ['hose.charging.coupled', 'bool', 0],
  ['hose.charging.couplerOpen', 'bool', 0],
  ['hose.charging.caught', 'bool', 0],
  ['can.can-1.valveSixteenths', '1', 0],
  ['can.can-1.tapped', 'bool', 0],
  ['lowSide.gaugePressurePa', 'Pa', 500_000],
  ['highSide.gaugePressurePa', 'Pa', 500_000],
  ['highSide.maxGaugePressurePa', 'Pa', 500_000],
  ['loop.massKg', 'kg', 0.48],
  ['loop.leaking', 'bool', 0],
  ['loop.beenEmpty', 'bool', 0],
  ...['known', 'mayService', 'mayBuyCan', 'mayCharge', 'mayTopUp', 'mayTopUpLeaky', 'mayRecover'].map(
    (id) => [`law.${id}`, 'bool', 1] as const,
  ),
  ...['mayHandleR12', 'mayConvert', 'mayChangeGas'].map((id) => [`law.${id}`, 'bool', 1] as const),
  ...['putsR12', 'convertsR12', 'changesGas'].map((id) => [`law.${id}`, 'bool', 1] as const),
  ['person.trainedForCar', 'bool', 0],
  ['decision.refer', 'bool', 0],
  ['label.massKg', 'kg', 0.48],
  ['vented.kg', 'kg', 0],
  ['cans.netIntoLoopKg', 'kg', 0],
  ['vent.temperatureK', 'K', 300],
  ['outside.temperatureK', 'K', 305],
  ['sheet.label.read', 'bool', 0],
  ['sheet.repair-bill.read', 'bool', 0],
  ['port.port-a.traced', 'bool', 0],
  ['port.port-b.traced', 'bool', 0],
  ['probe.air.centre-vent', 'bool', 0],
  ['decision.stop-charging', 'bool', 0],
  ['decision.do-not-charge', 'bool', 0],
  ['vent.airflowRatio', '1', 0],
  ['part.fan.replaced', 'bool', 0],
  ['lowSide.pressurePa', 'Pa', 601_325],
  ['chargingTank.valveSixteenths', '1', 0],
  ['manifold.high.sixteenths', '1', 0],
  ['device.vacuum-pump.running', 'bool', 0],
  ['device.micron-gauge.attached', 'bool', 0],
  ['chock.on', 'bool', 0],
  ['owner.converted.asked', 'bool', 0],
  ['owner.opened.asked', 'bool', 0],
  ['temperature.coldest', 'bool', 0],
  ['conversion.fittings', 'bool', 0],
  ['conversion.drier', 'bool', 0],
  ['conversion.seals', 'bool', 0],
  ['conversion.cutOut', 'bool', 0],
  ['conversion.labelled', 'bool', 0],
  ['conversion.labelForbidden', 'bool', 0],
  ['test.heldRatio', '1', 0],
  ['sealer.fromCansKg', 'kg', 0],
  ...['exhaust.inShutRoom', 'pit.in', 'heater.on', 'loop.flammable', 'person.highVoltageTrained'].map(
    (id) => [id, 'bool', 0] as const,
  ),
  ...['bypass.high-switch', 'bypass.low-switch'].map((id) => [id, 'bool', 0] as const),
  ['place.coPpm', '1', 0],
  ['highVoltage.volts', '1', 0],
  ['highVoltage.isolated', 'bool', 0],
  ...['windows.open', 'air.recirculated', 'probe.line.accumulator', 'probe.air.coil-outlet'].map(
    (id) => [id, 'bool', 0] as const,
  ),
  ['coolant.temperatureK', 'K', 300],
  ...['drier', 'liquid', 'liquid-end', 'suction', 'discharge'].map(
    (id) => [`probe.line.${id}`, 'bool', 0] as const,
  ),
  ...['cabin-filter', 'cycling-switch', 'clutch', 'discharge-condenser'].map(
    (id) => [`part.${id}.replaced`, 'bool', 0] as const,
  ),
  ...['owner.used.asked', 'owner.filled.asked', 'cause.leak-joint.named', 'sheet.workshop-bill.read'].map(
    (id) => [id, 'bool', 0] as const,
  ),
  ...['blower.speed', 'dirt.condenser', 'highPressureTrips'].map((id) => [id, '1', 0] as const),
  ...['sheet.can-back.read', 'fan.fan.turning', 'part.fan-relay.replaced'].map(
    (id) => [id, 'bool', 0] as const,
  ),
];

export function handRecord(
  rows: readonly HandRow[],
  measures: Partial<Record<MeasureId, number>> = {},
): SessionRecord {
  const signals: SignalSpec[] = AT_REST.map(([id, unit]) => ({ id, unit, kind: 'truth' }));
  const now = new Map(AT_REST.map(([id, , value]) => [id, value]));
  const values: number[] = [];
  const events: RecordedEvent[] = [];
  rows.forEach(({ step, set = {}, events: happened = [] }, row) => {
    for (const [id, value] of Object.entries(set)) {
      if (!now.has(id)) throw new Error(`a hand-written record has no signal ${id}`);
      now.set(id, value);
    }
    values.push(...now.values());
    for (const event of happened) events.push({ ...event, row, step });
  });
  const zeros = Object.fromEntries(measureList.map(({ id }) => [id, 0])) as Record<MeasureId, number>;
  return {
    scenarioId: 'by-hand',
    seed: 1,
    mode: 'assessed',
    lastStep: rows.at(-1)?.step ?? 0,
    signals,
    steps: Int32Array.from(rows, ({ step }) => step),
    values: Float64Array.from(values),
    events,
    actions: [],
    transitions: [],
    wentBack: 0,
    measures: { ...zeros, ...measures },
  };
}
