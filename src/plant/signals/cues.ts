/**
 * What eyes, ears and hands have without an instrument: what turns, what is frosted or wet, a hiss, a spray, a cold can.
 * A surface sweats below the dew point of the air round it and carries frost when it is also below freezing. An eye
 * tells eighths, no more: a cue is never a thermometer.
 */
import { dewPointK, humidityRatio } from '../../air/moistAir';
import type { CarPart } from '../../loop/car/assembleLoop';
import { hasEngine } from '../../loop/car/hasEngine';
import type { PlantParts } from '../assemblePlant';
import { lineEndK } from '../linePlaces';
import { pipeWallK } from '../pipeWallK';
import { fanTurning, hubTurning } from '../turning';
import { airCues } from './airCues';
import { glassCues } from './glassCues';
import { seen } from './seen';
import { flag, type Signal, signal } from './signal';
import { stainCues } from './stainCues';

const FREEZING_K = 273.15;
/** Below its threshold by this much a surface is covered all over, K. */
const FULL_COVER_K = 5;
const CHILLED_K = 8;
const HISS_KG_PER_S = 0.0005;
/** As loud as it gets [guess]. */
const LOUD_KG_PER_S = 0.02;
const HISS_PA = 30_000;
const SPRAY_PA = 5_000;

export function cueSignals(parts: PlantParts): Signal[] {
  const { car, desk, hoses, options } = parts;
  const { weather } = options;
  const ratio = humidityRatio(weather.temperatureK, weather.relativeHumidity, weather.pressurePa);
  const dewK = dewPointK(ratio, weather.pressurePa);
  const mostAir = car.vehicle.evaporatorAir.steps.at(-1) ?? 1;
  return [
    signal('engine.rpm', 'rpm', 'cue', () => desk.engineRpm),
    ...(hasEngine(car.vehicle) ? [] : [flag('car.ready', 'cue', () => true)]),
    flag('clutch.turning', 'cue', () => hubTurning(car)),
    ...car.vehicle.condenserAir.fans.map(({ part }) =>
      flag(`fan.${part}.turning`, 'cue', () => fanTurning(car, part)),
    ),
    signal('vent.airflowRatio', '1', 'cue', () => seen(car.number('coilFlow') / mostAir)),
    ...airCues(car),
    flag('metering.hissing', 'cue', () => isHissing(parts)),
    signal('metering.hissRatio', '1', 'cue', () =>
      isHissing(parts) ? seen(car.network.massFlowKgPerS(car.loop.metering) / LOUD_KG_PER_S) : 0,
    ),
    ...surfaces(parts).flatMap(([id, part]) => covers(id, dewK, () => pipeWallK(car, part))),
    ...covers('liquid-end', dewK, () => lineEndK(car)),
    ...[...hoses].flatMap(([id, { vessel }]) => [
      flag(`hose.${id}.caught`, 'cue', () => desk.hoses[id]?.caught === true),
      flag(`spray.${id}`, 'cue', () => desk.hoses[id]?.endOpen === true && isOverAir(parts, vessel)),
    ]),
    ...[...hoses].flatMap(([id, { vessel }]) =>
      covers(`hose-${id}`, dewK, () => car.network.wallTemperatureK(vessel, 0)),
    ),
    ...canCues(parts, dewK),
    ...stainCues(parts),
    ...glassCues(parts),
  ];
}

function canCues({ car, cans, options }: PlantParts, dewK: number): Signal[] {
  const ambientK = options.weather.temperatureK;
  return [...cans].flatMap(([id, { spec, vessel }]) => [
    signal(`can.${id}.heftRatio`, '1', 'cue', () => hefted(car.network.chargeKg(vessel) / spec.netKg)),
    flag(`can.${id}.chilled`, 'cue', () => car.network.wallTemperatureK(vessel, 0) < ambientK - CHILLED_K),
    signal(`can.${id}.frostLevelRatio`, '1', 'cue', () =>
      car.network.wallTemperatureK(vessel, 0) < dewK ? seen(car.network.liquidShare(vessel, 0)) : 0,
    ),
  ]);
}

/** In the hand: full, half, quarter. */
function hefted(share: number): number {
  return Math.max(0, Math.min(4, Math.round(4 * share))) / 4;
}

function cover(thresholdK: number, surfaceK: number): number {
  return seen((thresholdK - surfaceK) / FULL_COVER_K);
}

/** Frost and sweat of one surface. */
function covers(id: string, dewK: number, wallK: () => number): Signal[] {
  return [
    signal(`frost.${id}`, '1', 'cue', () => cover(FREEZING_K, wallK())),
    signal(`sweat.${id}`, '1', 'cue', () => cover(dewK, wallK())),
  ];
}

/** Drawn lines and vessels with the loop's part that stands for them: its own, or the one it leads to. */
function surfaces({ car, layout }: PlantParts): [string, CarPart][] {
  const byName = new Map(car.loop.parts.map((part) => [part.part, part]));
  const found = new Map<string, CarPart>();
  for (const line of layout.lines) {
    const part = byName.get(line.id) ?? byName.get(line.to ?? '') ?? byName.get(line.from ?? '');
    if (part && line.from) found.set(line.id, part);
  }
  for (const { id } of layout.parts) {
    const part = byName.get(id);
    if (part && part.around === 'bay') found.set(id, part);
  }
  return [...found];
}

function isHissing({ car }: PlantParts): boolean {
  const { network, loop } = car;
  const dropPa = network.pressurePa(loop.high) - network.pressurePa(loop.low);
  return !hubTurning(car) && dropPa > HISS_PA && network.massFlowKgPerS(loop.metering) > HISS_KG_PER_S;
}

function isOverAir({ car, options }: PlantParts, vessel: number): boolean {
  return car.network.pressurePa(vessel) > options.weather.pressurePa + SPRAY_PA;
}
