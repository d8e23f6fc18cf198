/** Tables of what cars, benches and loops have. */
import { faults } from '../../faults/registry';
import { formatQuantity } from '../../units/format';
import { word } from '../../words/words';
import { figureOf } from '../../workshop/reader/figureOf';
import { carsText, joined, named, placeNamed, rangeText } from './cells';
import { listParts, listPlaces, listRoutes, listZones } from './listCar';
import { listed } from './listed';
import { listFaults } from './listFaults';
import { listTools } from './listTools';
import { listPorts, listVehicles } from './listVehicles';

const METRIC = { pressure: 'kPa', temperature: 'degC', mass: 'g' } as const;
const grams = (kg: number): string => formatQuantity(kg, 'g', 1);

const vehicles = listed(listVehicles, {
  id: ({ id }) => id,
  what: ({ title }) => title,
  refrigerant: ({ refrigerant }) => refrigerant,
  charge: ({ chargeKg, toleranceKg }) => `${grams(chargeKg)} ± ${grams(toleranceKg)}`,
  oil: ({ oil }) => oil,
  metering: ({ metering }) => named(`name.choice.${metering}`, metering),
});

const faultOf = (id: string) => faults.find((fault) => fault.id === id);

/** Of a severity: how it is when sound, and at its worst. */
function worst({ id }: { readonly id: string }): string {
  const quantity = faultOf(id)?.quantity;
  if (quantity === undefined) return '';
  const told = (severity: number): string =>
    figureOf(quantity.name, quantity.unit, quantity.at(severity), METRIC);
  return word('list.told.fromTo', { from: told(0), to: told(1) });
}

const faultList = listed(listFaults, {
  id: ({ id }) => id,
  what: ({ title }) => title,
  severity: (fault) => `${fault.quantity}: ${worst(fault)}`,
  mendedBy: ({ clearedBy }) => joined(clearedBy),
  cars: ({ vehicles: cars }) => carsText(cars),
});

const ports = listed(
  listPorts,
  {
    id: ({ id }) => id,
    side: ({ side }) => named(`name.side.${side}`),
    on: ({ on }) => placeNamed(Object.values(on)[0]),
    bore: ({ boreMm }) => `${boreMm} mm`,
  },
  ({ vehicle }) => vehicle,
);

/** `discharge-condenser` is the joint of a line and a part. */
function placeText(id: string): string {
  if (placeNamed(id) !== '') return placeNamed(id);
  const cuts = [...id.matchAll(/-/g)].map(({ index }) => [id.slice(0, index), id.slice(index + 1)] as const);
  const known = cuts.find(([line, part]) => named(`name.line.${line}`) !== '' && placeNamed(part) !== '');
  return known ? word('name.joint', { line: placeNamed(known[0]), part: placeNamed(known[1]) }) : '';
}

type Part = ReturnType<typeof listParts>[number];
const doable = (part: Part): string =>
  joined((['look', 'replace', 'clean'] as const).filter((deed) => part[deed]));

const parts = listed(
  listParts,
  { id: ({ id }) => id, what: ({ id }) => placeText(id), doable },
  ({ vehicle }) => vehicle,
);

const places = listed(
  listPlaces,
  {
    id: ({ id }) => id,
    what: ({ id }) => placeText(id),
    hidden: ({ hidden }) => (hidden ? word('list.told.yes') : ''),
    faults: ({ faults: ids }) => joined(ids),
  },
  ({ vehicle }) => vehicle,
);

const zones = listed(
  listZones,
  {
    id: ({ id }) => id,
    what: ({ id }) => named(`name.zone.${id}`),
    hazard: ({ hazard }) => (hazard === null ? '' : named(`list.hazardOf.${hazard}`, hazard)),
  },
  ({ vehicle }) => vehicle,
);

const routes = listed(
  listRoutes,
  { id: ({ id }) => id, port: ({ port }) => port, may: ({ route }) => route },
  ({ vehicle }) => vehicle,
);

type Tool = ReturnType<typeof listTools>[number];

function toolText(tool: Tool): string {
  if ('resolution' in tool) return named(`name.channel.${tool.id}`, named(`list.toolName.${tool.id}`));
  if (tool.kind === 'hose') return named(`name.part.hose-${tool.id}`);
  return named(`panels.service.${tool.id}`, named(`list.toolName.${tool.id}`));
}

function toolFigures(tool: Tool): string {
  if ('resolution' in tool) return rangeText(tool as Parameters<typeof rangeText>[0]);
  if (tool.kind !== 'hose') return named(`panels.service.${tool.id}Sub`);
  return 'takesCan' in tool && tool.takesCan ? word('list.told.takesCan') : '';
}

const tools = listed(listTools, {
  id: ({ id }) => id,
  what: toolText,
  kind: ({ kind }) => named(`list.toolKind.${kind}`, kind),
  notes: toolFigures,
});

/** By the word behind `list`. */
export const carTables = { vehicles, faults: faultList, tools, ports, parts, places, zones, routes };
