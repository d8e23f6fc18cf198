/**
 * Someone licensed takes the refrigerant out: pumps from both service ports into a tank that they bring and take away again,
 * so what was in it leaves the books as taken away, not as vented. Until they are done nobody else touches the car.
 */
import { LICENSED_RECOVERY } from '../equipment/licensedRecovery';
import { type Command, commandSpecs, type Outcome, type PlantEvent } from './commandSpecs';
import type { Desk } from './desk';
import { dropLink } from './links';
import { mayTurn } from './mayTurn';
import { done, type Rig, type RigPort, refuse } from './rig';
import { STEP_S } from './stepTime';

const TANK = 'tool:licensed-tank';
const SECONDS_PER_MINUTE = 60;
const SIDES = ['low', 'high'] as const;
const linkOf = (side: string): string => `licensed:${side}`;
/** What may be done meanwhile: looking, writing, letting air in. */
const FREE_GROUPS: ReadonlySet<string> = new Set(['gear', 'look', 'card', 'session', 'measure']);
const FREE: ReadonlySet<string> = new Set(['door', 'chock', 'windows', 'mark-can', 'store-can']);
/** Of the free groups, what is work on the car all the same. */
const TOUCHES: ReadonlySet<string> = new Set(['replace']);
/** Left in a tank that was evacuated, kg. */
const TRACE_KG = 1e-4;

export function handsOff({ tasks }: Desk, command: Command): Outcome | null {
  if (tasks.licensed === null || FREE.has(command.do)) return null;
  const touches = TOUCHES.has(command.do) || !FREE_GROUPS.has(commandSpecs[command.do].group);
  return touches ? refuse('licensedAtWork') : null;
}

export function sendForLicensed(rig: Rig): Outcome {
  const { desk, network, step } = rig;
  if (desk.tasks.licensed !== null) return refuse('already');
  const turns = mayTurn(rig);
  if (turns) return refuse(turns);
  if (Object.values(desk.hoses).some(({ port }) => port !== null)) return refuse('hosesInTheWay');
  if (desk.search.opened.length > 0) return refuse('loopStandsOpen');
  const isSpent = rig.loopVessels.every((side) => network.pressurePa(side) < rig.airPressurePa);
  if (isSpent) return refuse('nothingToTake');
  const tank = bringTank(rig);
  for (const side of SIDES) {
    const port = [...rig.ports.values()].find((one) => one.side === side) as RigPort;
    network.addLink({
      kind: 'pump',
      id: linkOf(side),
      from: port.at,
      to: { vessel: tank, cell: 0, height: 'top' },
      speedM3PerS: LICENSED_RECOVERY.speedM3PerS,
      ultimatePa: LICENSED_RECOVERY.ultimatePa,
      opening: 1,
    });
  }
  const minutes = LICENSED_RECOVERY.minutes;
  desk.tasks.licensed = { untilStep: step() + Math.round((minutes * SECONDS_PER_MINUTE) / STEP_S) };
  return done({ id: 'recovery-arranged', quantity: LICENSED_RECOVERY.price, unit: '1' });
}

function bringTank({ network, ambientK }: Rig): number {
  const insideWPerK = [80, 8, 30] as const;
  const tank = network.addVessel(
    {
      id: TANK,
      cells: [
        {
          id: 'body',
          kind: 'pot',
          volumeM3: LICENSED_RECOVERY.tankM3,
          wallHeatCapacityJPerK: LICENSED_RECOVERY.tankWallJPerK,
          insideWPerK,
          outsideWPerK: LICENSED_RECOVERY.tankWPerK,
          outletHeight: 1,
        },
      ],
    },
    { temperatureK: ambientK, refrigerantKg: TRACE_KG },
  );
  network.setSurroundings(tank, 0, ambientK, LICENSED_RECOVERY.tankWPerK);
  return tank;
}

/** After a step: whether they are done, and what they took. */
export function heedLicensed({ desk, network, step }: Rig, events: PlantEvent[]): void {
  const { tasks } = desk;
  if (tasks.licensed === null || step() < tasks.licensed.untilStep) return;
  const tank = network.vesselNamed(TANK);
  const kg = network.chargeKg(tank) - TRACE_KG;
  tasks.licensed = null;
  tasks.licensedKg = (tasks.licensedKg ?? 0) + kg;
  tasks.oilOutKg += network.massKg(tank, 'oil');
  for (const side of SIDES) dropLink(network, linkOf(side));
  network.removeVessel(tank);
  events.push({ id: 'licensed-recovered', quantity: kg, unit: 'kg' });
}
