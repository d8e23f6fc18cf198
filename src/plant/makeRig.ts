/** The face of a plant that command handlers see. */
import type { PlantParts } from './assemblePlant';
import { dueWith } from './due';
import { cyclesPerMinute } from './keepTally';
import { glowAt } from './leakSearch';
import { addOil } from './oilBook';
import { wipeStains } from './oilStains';
import { CHANNELS, type Channel, isStopped, shownOn } from './panel';
import { placeOf } from './placeAir';
import { replaceable } from './replaceable';
import type { Rig } from './rig';
import { searchReading } from './searchReading';
import { SEARCH, TALLY } from './tally';
import { hubTurning } from './turning';

const TRIM_OF: Readonly<Partial<Record<Channel, 'charging' | 'low' | 'high'>>> = {
  'charging-gauge': 'charging',
  'low-gauge': 'low',
  'high-gauge': 'high',
};

export function makeRig(parts: PlantParts): Rig {
  const { car, layout, desk, ports, hoses, cans, faults, options, tally, panel, toolVessels } = parts;
  const benchOil = options.bench.oil ?? dueWith(car.vehicle, parts.onBench).oil;
  const trimOf = (channel: string): number => {
    const trim = TRIM_OF[channel as Channel];
    return trim ? desk.trims[trim] : 0;
  };
  return {
    network: car.network,
    vehicle: car.vehicle,
    onBench: parts.onBench,
    benchOil,
    loopVessels: [car.loop.high, car.loop.low],
    place: placeOf(parts),
    layout,
    desk,
    ports,
    hoses,
    cans,
    tools: options.bench.tools ?? [],
    toolVessels,
    sheets: sheetsOf(parts),
    causes: faults.causes,
    places: new Map(parts.places.map((place) => [place.id, place])),
    replaceable: replaceable(parts),
    ambientK: options.weather.temperatureK,
    airPressurePa: options.weather.pressurePa,
    step: () => tally[TALLY.step],
    reading(channel) {
      const index = CHANNELS.indexOf(channel as Channel);
      return index < 0 ? searchReading(desk.search, channel) : shownOn(panel, index, trimOf(channel));
    },
    isStopped(channel) {
      const index = CHANNELS.indexOf(channel as Channel);
      return index >= 0 && isStopped(panel, index, trimOf(channel));
    },
    repair(part) {
      faults.repair(part);
      car.renew(part);
      wipeStains(parts, part);
    },
    clean(part) {
      faults.clean(part);
      wipeStains(parts, part);
    },
    injectDye(kg, vessel) {
      addOil(parts, benchOil, () => car.network.bringIn(vessel, 'oil', kg));
      tally[SEARCH.dyeKg] += kg;
    },
    addOil: (kind, kg, vessel, at = 'walls') =>
      addOil(parts, kind, () => car.network.bringIn(vessel, 'oil', kg, at)),
    clutch: () => ({
      turning: hubTurning(car),
      slip: car.number('clutchSlip'),
      cyclesPerMin: cyclesPerMinute(tally),
    }),
    glowAt: (place) => glowAt(parts, place),
    unsettle(channel) {
      panel.lagged[CHANNELS.indexOf(channel as Channel)] = Number.NaN;
    },
  };
}

export function sheetsOf({ options }: PlantParts): readonly string[] {
  return ['label', 'service', ...(options.papers ?? [])];
}
