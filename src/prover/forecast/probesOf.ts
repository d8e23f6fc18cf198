/**
 * Every test there is for a car, whatever the bench has: gauges, thermometers, looks, a sample to the identifier, and the
 * charge weighed as it comes out. Prices are those of `suspects/testCosts`.
 */
import { NAMED_GASES } from '../../equipment/identifier';
import { linePlaces } from '../../plant/linePlaces';
import type { Ghost } from '../../suspects/ghost';
import { readingMinutes } from '../../suspects/testCosts';
import type { Probe } from './probe';
import type { StageId } from './stages';

type Test = Omit<Probe, 'id' | 'stage' | 'minutes'>;

/** Not on the motorway: a needle goes on creeping there, and most ghosts are not lived that long. */
const NEEDLES: readonly StageId[] = ['rest', 'running', 'idle', 'shut'];
const TURNING: readonly StageId[] = ['running', 'idle', 'shut', 'motorway'];
const LONG: readonly StageId[] = ['running', 'shut'];
/** From here a fan that comes with the compressor turns [guess]. */
const FAN_FROM_S = 10;
const SHARES = ['gas-r134a', 'gas-r12', 'gas-r1234yf', 'gas-hydrocarbon', 'gas-air'] as const;
const SEEN_SHARES = ['r134aShare', 'r12Share', 'r1234yfShare', 'hydrocarbonShare', 'airShare'] as const;

/** `any` is one ghost of the car, for what there is to see on it; `stages` those it can be put through. */
export function probesOf(any: Ghost, stages: readonly StageId[]): readonly Probe[] {
  const has = new Set(any.plant.signals.map(({ id }) => id));
  const fans = any.parts.car.vehicle.condenserAir.fans.map(({ part }) => part);
  const at = (where: readonly StageId[], test: Test): Probe[] =>
    where
      .filter((stage) => stages.includes(stage))
      .map((stage) => ({
        ...test,
        id: `${test.channel}.${stage}`,
        stage,
        minutes: readingMinutes(test.channel),
      }));
  const looks = (where: readonly StageId[], signal: string, fold: Probe['fold'], fromS?: number): Probe[] =>
    has.has(signal) ? at(where, look(signal, fold, fromS)) : [];
  return [
    ...at(NEEDLES, gauge('low-gauge', 'lowSide', 'lowGauge', 'charging-hose', 'mean')),
    ...at(NEEDLES, gauge('high-gauge', 'highSide', 'highGauge', 'gauge-set', 'mean')),
    ...at(LONG, gauge('low-swing', 'lowSide', 'lowGauge', 'charging-hose', 'swing')),
    ...at(TURNING, air('centre-vent', 'vent.temperatureK')),
    ...at(LONG, air('coil-outlet', 'air:coil-outlet')),
    ...linePlaces(any.parts.car).flatMap((place) => at(LONG, line(place))),
    ...looks(['running', 'shut', 'motorway', 'off', 'bridged'], 'clutch.turning', 'watch'),
    ...looks(TURNING, 'clutch.hubSpeedRatio', 'slips'),
    ...looks(['shut'], 'clutch.smelling', 'ever'),
    ...fans.flatMap((fan) => looks(['running', 'idle'], `fan.${fan}.speedRatio`, 'fan', FAN_FROM_S)),
    ...looks(['running', 'motorway'], 'vent.airflowRatio', 'mean').map(
      (probe): Probe => ({ ...probe, unit: '1' }),
    ),
    ...looks(['running'], 'blower.turning', 'ever'),
    ...looks(LONG, 'sightGlass.bubblesRatio', 'ever'),
    ...looks(LONG, 'sightGlass.streaked', 'ever'),
    ...looks(LONG, 'compressor.knocking', 'ever'),
    ...looks(['shut'], 'compressor.rattling', 'ever'),
    ...looks(['rest'], 'dirt.condenser', 'ever'),
    ...looks(['rest'], 'dirt.cabin-filter', 'ever'),
    ...looks(['rest'], 'dirt.evaporator', 'ever'),
    ...gasesOf(any).flatMap((gas) => at(['rest'], share(gas))),
    ...at(['rest'], { ...look('leaks', 'ever'), channel: 'leak-search', tool: 'detector' }),
    ...at(['rest'], {
      channel: 'recovery-scale',
      tool: 'recovery-machine',
      unit: 'kg',
      fold: 'mean',
      truth: 'held',
      seen: 'recoveryScale.massKg',
    }),
  ];
}

/** The loop's own and air: which other gas makes up the rest is no matter, and no ghost knows. */
const gasesOf = ({ parts: { options } }: Ghost): number[] =>
  NAMED_GASES.flatMap((name, gas) => (name === options.refrigerant || name === 'air' ? [gas] : []));

const gauge = (
  channel: string,
  side: string,
  shown: string,
  tool: Probe['tool'],
  fold: Probe['fold'],
): Test => ({
  channel,
  tool,
  unit: 'Pa',
  fold,
  truth: `${side}.gaugePressurePa`,
  seen: `${shown}.gaugePressurePa`,
});

const air = (place: string, truth: string): Test => ({
  channel: `air@${place}`,
  tool: 'thermometer',
  unit: 'K',
  fold: 'mean',
  truth,
  seen: 'airThermometer.temperatureK',
  place,
});

const line = (place: string): Test => ({
  channel: `line@${place}`,
  tool: 'thermometer',
  unit: 'K',
  fold: 'mean',
  truth: `line:${place}`,
  seen: 'lineThermometer.temperatureK',
  place,
});

const look = (signal: string, fold: Probe['fold'], fromS?: number): Test => ({
  channel: signal,
  tool: 'eyes',
  unit: 'look',
  fold,
  truth: signal,
  seen: signal,
  ...(fromS === undefined ? {} : { fromS }),
});

const share = (gas: number): Test => ({
  channel: SHARES[gas],
  tool: 'identifier',
  unit: '1',
  fold: 'mean',
  truth: `sample:${gas}`,
  seen: `identifier.${SEEN_SHARES[gas]}`,
});
