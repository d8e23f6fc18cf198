/** The face of a plant that command handlers see. */
import type { PlantParts } from './assemblePlant';
import { glowAt } from './leakSearch';
import { CHANNELS, type Channel, shownOn } from './panel';
import { replaceable } from './replaceable';
import type { Rig } from './rig';
import { SEARCH, TALLY } from './tally';

const TRIM_OF: Readonly<Partial<Record<Channel, 'charging' | 'low' | 'high'>>> = {
  'charging-gauge': 'charging',
  'low-gauge': 'low',
  'high-gauge': 'high',
};

export function makeRig(parts: PlantParts): Rig {
  const { car, layout, desk, ports, hoses, cans, faults, options, tally, panel, toolVessels } = parts;
  return {
    network: car.network,
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
      const trim = TRIM_OF[channel as Channel];
      return shownOn(panel, index, trim ? desk.trims[trim] : 0);
    },
    repair(part) {
      faults.repair(part);
      car.renew(part);
    },
    clean: (part) => faults.clean(part),
    injectDye(kg, vessel) {
      car.network.bringIn(vessel, 'oil', kg);
      tally[SEARCH.dyeKg] += kg;
    },
    glowAt: (place) => glowAt(parts, place),
    unsettle(channel) {
      panel.lagged[CHANNELS.indexOf(channel as Channel)] = Number.NaN;
    },
  };
}

export function sheetsOf({ options }: PlantParts): readonly string[] {
  return ['label', 'service', ...(options.papers ?? [])];
}
