/**
 * Where a caution is met: a command that is about to be sent, looked at with what the trainee has shown so far. A caution
 * never stops anybody; it names the hazard and puts the safe act first. Nothing here reads hidden truth.
 */
import type { Layout } from '../layout/layout';
import { hazardsOf } from '../layout/zones';
import type { Command } from '../plant/commandSpecs';
import type { SessionView } from '../session/corePort';
import { hazardLooks } from './hazardCautions';

export type CautionId =
  | 'whichPort'
  | 'highOpen'
  | 'canOpen'
  | 'goggles'
  | 'hoseInZone'
  | 'doorStart'
  | 'doorShut'
  | 'heater'
  | 'hotWater'
  | 'strongGas'
  | 'bridge'
  | 'overfill'
  | 'adapter'
  | 'pit'
  | 'plug'
  | 'live'
  | 'looseClothes'
  | 'unknownGas'
  | 'hoseOnHot'
  | 'fan'
  | 'letOut'
  | 'wrongOil'
  | 'canOnUnknown'
  | 'sealer'
  | 'standing';

export interface Caution {
  readonly id: CautionId;
  /** Commands of the safe answer; none where the answer is to leave it. */
  readonly safe: readonly Command[];
}

export interface CautionFacts {
  readonly view: SessionView;
  readonly layout: Layout;
  readonly engineRuns: boolean;
  readonly doorOpen: boolean;
  readonly highValveOpen: boolean;
  readonly hoodOpen: boolean;
  readonly heaterBurns: boolean;
  readonly isElectric: boolean;
  readonly isIsolated: boolean;
  /** The identifier has taken a sample. */
  readonly gasKnown: boolean;
  /** What has been seen of sealer; and what lies on the bench to look for either. */
  readonly sealerKnown: boolean;
  readonly tools: readonly string[];
  /** Engine and air conditioning are on, and the hub is seen to stand. */
  readonly hubStands: boolean;
}

const WITH_REFRIGERANT: ReadonlySet<Command['do']> = new Set([
  'couple',
  'uncouple',
  'tap',
  'untap',
  'purge',
  'can-valve',
  'open-loop',
  'identify',
  'test-sealer',
]);

function withoutGoggles(command: Command, { view }: CautionFacts): Caution | null {
  if (!WITH_REFRIGERANT.has(command.do) || view.worn.includes('goggles')) return null;
  const safe: Command[] = [{ do: 'wear', item: 'goggles' }];
  if (!view.worn.includes('gloves')) safe.push({ do: 'wear', item: 'gloves' });
  return { id: 'goggles', safe };
}

/** A can about to be opened into a hose whose port nobody has shown to be the low side. */
function openingCan(command: Command, facts: CautionFacts): Caution | null {
  if (command.do !== 'can-valve' || Number(command.turn) === 0) return null;
  const can = facts.view.cans.find((one) => one.id === command.can);
  if (!can || can.onto === null || can.valveSixteenths > 0) return null;
  if (can.onto === 'utility' && facts.highValveOpen) {
    return { id: 'highOpen', safe: [{ do: 'manifold', side: 'high', turn: 0 }] };
  }
  const hose = facts.view.hoses.find((one) => one.id === (can.onto === 'utility' ? 'gauge-low' : can.onto));
  const port = facts.view.ports.find((one) => one.id === hose?.port);
  if (!port || port.traced || port.judged === 'low') return null;
  return { id: 'whichPort', safe: [{ do: 'trace', port: port.id }] };
}

function openingHighValve(command: Command, { view }: CautionFacts): Caution | null {
  if (command.do !== 'manifold' || command.side !== 'high' || Number(command.turn) === 0) return null;
  const open = view.cans.find((can) => can.onto === 'utility' && can.valveSixteenths > 0);
  return open ? { id: 'canOpen', safe: [{ do: 'can-valve', can: open.id, turn: 0 }] } : null;
}

function startingEngine(command: Command, facts: CautionFacts): Caution | null {
  if (command.do !== 'engine' || Number(command.rpm) === 0 || facts.engineRuns) return null;
  const met = facts.view.hoses.flatMap(({ port, route }) => (port ? hazardsOf(facts.layout, route) : []));
  if (met.some((hazard) => hazard !== 'heat')) return { id: 'hoseInZone', safe: [] };
  if (met.length > 0) return { id: 'hoseOnHot', safe: [] };
  return facts.doorOpen ? null : { id: 'doorStart', safe: [{ do: 'door', to: 'open' }] };
}

function shuttingDoor(command: Command, facts: CautionFacts): Caution | null {
  return command.do === 'door' && command.to === 'shut' && facts.engineRuns
    ? { id: 'doorShut', safe: [] }
    : null;
}

const LOOKS = [
  openingCan,
  openingHighValve,
  startingEngine,
  shuttingDoor,
  withoutGoggles,
  ...hazardLooks,
] as const;

/** The first caution that belongs before `command` and was not answered just now, or null. */
export function cautionBefore(
  command: Command,
  facts: CautionFacts,
  isQuiet: (id: CautionId) => boolean = () => false,
): Caution | null {
  for (const look of LOOKS) {
    const caution = look(command, facts);
    if (caution && !isQuiet(caution.id)) return caution;
  }
  return null;
}
