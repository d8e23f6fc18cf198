/** What an argument may name in this car, on this bench. */
import type { PlantParts } from './assemblePlant';
import { CASE_OPENINGS } from './caseOpenings';
import type { IdSet } from './commandSpecs';
import { linePlaces } from './linePlaces';
import { sheetsOf } from './makeRig';
import { CHANNEL_TOOLS, CHANNELS } from './panel';
import { replaceable } from './replaceable';
import { SEARCH_CHANNELS } from './searchReading';

const AIR_PLACES = ['centre-vent', 'coil-outlet', 'condenser-inlet', 'outside'] as const;

export function choicesOf(parts: PlantParts, set: IdSet): readonly string[] {
  const { layout, hoses, cans, faults } = parts;
  switch (set) {
    case 'port':
      return layout.ports.map(({ id }) => id);
    case 'covered-port':
      return layout.ports.filter(({ cover }) => cover !== undefined).map(({ id }) => id);
    case 'part':
      return layout.parts.filter(({ name }) => name !== undefined).map(({ id }) => id);
    case 'hose':
      return [...hoses.keys()].filter((id) => id !== 'utility');
    case 'any-hose':
    case 'device-place':
      return [...hoses.keys()];
    case 'can':
      return [...cans.keys()];
    case 'can-inlet':
      return [...hoses.values()].filter(({ spec }) => spec.takesCan).map(({ spec }) => spec.id);
    case 'gauge':
      return [...hoses.values()].flatMap(({ spec }) => (spec.gauge ? [spec.gauge] : []));
    case 'air-place':
      return parts.car.vehicle.rear ? [...AIR_PLACES, 'rear-vent'] : AIR_PLACES;
    case 'line-place':
      return linePlaces(parts.car);
    case 'zone':
      return layout.zones.map(({ id }) => id);
    case 'channel':
      return [...CHANNELS, ...SEARCH_CHANNELS].filter((channel) => hasChannel(parts, channel));
    case 'sheet':
      return sheetsOf(parts);
    case 'cause':
      return faults.causes;
    case 'replaceable':
      return replaceable(parts);
    case 'leak-place':
      return [...parts.places.map(({ id }) => id), ...Object.keys(CASE_OPENINGS)];
    case 'cleanable':
      return faults.cleanable;
    case 'loop-place':
      return parts.places.map(({ id }) => id);
    case 'device':
      return Object.keys(parts.desk.service.devices);
    case 'tank':
      return parts.toolVessels.chargingTank < 0 ? [] : ['charging-tank'];
  }
}

function hasChannel({ hoses, cans, options }: PlantParts, channel: string): boolean {
  const tool = CHANNEL_TOOLS[channel];
  if (tool) return options.bench.tools?.includes(tool) === true;
  if (channel === 'charging-gauge') return hoses.has('charging');
  if (channel === 'low-gauge' || channel === 'high-gauge') return hoses.has('gauge-low');
  return channel !== 'scale' || cans.size > 0;
}
