/**
 * What may be written in a scenario, as plain data for whoever helps with writing: keys with what may stand there, units,
 * vehicles, faults with what each severity means, commands with their arguments. In the language that is set,
 * figures in the units given.
 */
import { conditionSchema } from '../../../shared/schema/condition';
import { describeKeys, type KeyDescription } from '../../../shared/schema/describeKeys';
import { PERSONS } from '../../../shared/schema/persons';
import { planLinesSchema } from '../../../shared/schema/plan';
import { ruleSchema } from '../../../shared/schema/rubric';
import { scenarioSchema } from '../../../shared/schema/scenario';
import { WAITS } from '../../../shared/schema/waits';
import type { Fault } from '../../faults/fault';
import { FAULT_GROUPS, type FaultGroup } from '../../faults/registry';
import type { DisplayUnits } from '../../instruments/displayUnits';
import { layoutOf } from '../../layout/layouts';
import { placesOf } from '../../layout/placesOf';
import { tracePort } from '../../layout/trace';
import { routesOf } from '../../layout/zones';
import { vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import { type ArgSpec, type CommandId, commandSpecs } from '../../plant/commandSpecs';
import { mends } from '../../plant/faultBook';
import { eventIds } from '../../session/conditions/eventIds';
import { isTrained } from '../../session/law/isTrained';
import { rubrics } from '../../session/scenario/rubrics';
import { KINDS } from '../../units/unitTable';
import { isWordId, say } from '../../words/words';
import type { PortWays } from '../edit/portChanges';
import { figureOf } from './figureOf';

export interface VehicleWord {
  readonly id: string;
  readonly name: string;
  readonly refrigerant: string;
  readonly chargeG: number;
  readonly ports: readonly PortWays[];
  /** Who may lay hands on it, who is trained least first. */
  readonly persons: readonly string[];
}

export interface FaultWord {
  readonly id: string;
  readonly group: FaultGroup;
  readonly title: string;
  /** What a severity stands for. */
  readonly quantity: string;
  /** That quantity at severities of 0, 0.05 … 1. */
  readonly figures: readonly string[];
  /** Vehicles that can have it. */
  readonly vehicles: readonly string[];
  /** By vehicle, parts whose renewal takes it away; of a leak where it usually is. */
  readonly mendedBy: Readonly<Record<string, readonly string[]>>;
  readonly excludes: readonly string[];
}

export interface CommandWord {
  readonly id: string;
  readonly args: readonly (readonly [name: string, spec: ArgSpec])[];
}

export interface Vocabulary {
  readonly keys: readonly KeyDescription[];
  readonly units: Readonly<Record<string, readonly string[]>>;
  readonly vehicles: readonly VehicleWord[];
  readonly faults: readonly FaultWord[];
  readonly commands: readonly CommandWord[];
  readonly waits: readonly string[];
  readonly events: readonly string[];
  readonly rubrics: readonly string[];
}

export const SEVERITY_STEPS = 20;
const G_PER_KG = 1000;

const ELSEWHERE = new Map([
  [conditionSchema, 'condition'],
  [ruleSchema, 'rule'],
  [planLinesSchema, 'plan'],
] as [typeof conditionSchema, string][]);

/** All vehicles have to be there. */
export function vocabulary(units: DisplayUnits): Vocabulary {
  return {
    keys: describeKeys(scenarioSchema, ELSEWHERE),
    units: Object.fromEntries(Object.entries(KINDS).map(([kind, { units }]) => [kind, Object.keys(units)])),
    vehicles: vehicleIds.map((id) => {
      const { refrigerant, charge } = vehicleOf(id).label;
      return {
        id,
        name: named(`name.vehicle.${id}`, id),
        refrigerant,
        chargeG: Math.round(charge * G_PER_KG),
        ports: portsOf(id),
        persons: PERSONS.filter((person) => isTrained(person, id)),
      };
    }),
    faults: groupedFaults().map(({ group, fault }) => ({
      id: fault.id,
      group,
      title: named(`faults.${fault.id}.title`, fault.id),
      quantity: named(`faults.quantity.${fault.quantity.name}`, fault.quantity.name),
      figures: Array.from({ length: SEVERITY_STEPS + 1 }, (_, step) =>
        figureOf(fault.quantity.name, fault.quantity.unit, fault.quantity.at(step / SEVERITY_STEPS), units),
      ),
      vehicles: vehicleIds.filter((id) => fault.applies(vehicleOf(id))),
      mendedBy: Object.fromEntries(vehicleIds.map((id) => [id, mendingParts(fault, id)])),
      excludes: fault.excludes,
    })),
    commands: (Object.keys(commandSpecs) as CommandId[]).map((id) => ({
      id,
      args: Object.entries(commandSpecs[id].args) as [string, ArgSpec][],
    })),
    waits: WAITS,
    events: eventIds,
    rubrics: [...rubrics.keys()],
  };
}

const groupedFaults = () =>
  (Object.keys(FAULT_GROUPS) as FaultGroup[]).flatMap((group) =>
    FAULT_GROUPS[group].map((fault: Fault) => ({ group, fault })),
  );

function mendingParts({ id, clearedBy }: Fault, vehicle: string): readonly string[] {
  const layout = layoutOf(vehicle);
  const known = placesOf(layout);
  return clearedBy.filter((part) => known.has(part) && mends(layout, part, { id }));
}

function portsOf(vehicle: string): PortWays[] {
  const layout = layoutOf(vehicle);
  return layout.ports.map(({ id }) => ({
    id,
    side: tracePort(layout, id).side,
    ways: routesOf(layout, id).map((route) => ({ id: route.id, through: route.through.join(',') })),
  }));
}

const named = (id: string, otherwise: string): string => (isWordId(id) ? say({ id }) : otherwise);
