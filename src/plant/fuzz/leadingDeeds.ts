/** Short runs of commands that lead a plant into a state, or make a command possible that needs others first. */
import type { HoseId } from '../../equipment/hoses';
import type { PlantParts } from '../assemblePlant';
import type { Command, CommandId } from '../commandSpecs';
import { type Draw, pick } from './fuzzCase';
import type { PlantState } from './plantStates';

const HOOD: Command = { do: 'hood', to: 'open' };
const OFF: Command = { do: 'engine', rpm: 0 };
const COUPLED = ['charging', 'gauge-low', 'gauge-high'] as const;
const INLETS = ['charging', 'utility'] as const;

/** Towards a state, from whatever is. */
export function towards(state: PlantState, parts: PlantParts, next: Draw): Command[] {
  switch (state) {
    case 'open':
      return [OFF, ...undoAPlace(parts, next)];
    case 'standing':
    case 'evacuated':
      return state === 'standing' || next() < 0.5 ? [OFF] : started(800);
    case 'tripped':
      return [...started(3000), { do: 'windows', to: 'open' }, { do: 'air', to: 'fresh' }];
    case 'idling':
      return [...started(800), { do: 'ac', to: 'off' }];
    default:
      return started(800 + 50 * Math.floor(44 * next()));
  }
}

function started(rpm: number): Command[] {
  return [
    { do: 'engine', rpm },
    { do: 'ac', to: 'on' },
    { do: 'blower', speed: rpm < 1500 ? 2 : 4 },
  ];
}

/** What a command mostly needs before it. */
export function before(id: CommandId, parts: PlantParts, next: Draw): Command[] {
  switch (id) {
    case 'coupler':
    case 'uncouple':
    case 'route':
      return hooked(parts, pick(COUPLED, next));
    case 'couple':
    case 'cap':
      return [HOOD, ...bare(parts, pick([...parts.ports.keys()], next))];
    case 'identify':
    case 'test-sealer':
      return [HOOD, ...bare(parts, pick([...parts.ports.keys()], next))];
    case 'inject-dye':
      return [HOOD, ...bare(parts, portOn(parts, 'low'))];
    case 'inject-oil':
      return oilWay(parts, next);
    case 'replace':
      return [OFF, ...undoAPlace(parts, next)];
    case 'fill-oil':
    case 'renew-seals':
      return [OFF, ...undoAPlace(parts, next)];
    case 'convert-port':
    case 'disable-port':
      return [OFF, HOOD, ...bare(parts, pick([...parts.ports.keys()], next))];
    case 'arrange':
      return [OFF, ...unhooked(parts)];
    case 'store-can':
      return [
        ...freed(parts),
        ...[...parts.cans.keys()].map((can): Command => ({ do: 'place', can, at: 'mat' })),
      ];
    case 'soap':
    case 'clean':
    case 'fit-cut-out':
    case 'open-loop':
      return [OFF, HOOD];
    case 'take-off':
      return [
        { do: 'wear', item: 'goggles' },
        { do: 'wear', item: 'gloves' },
        { do: 'wear', item: 'overall' },
      ];
    case 'can-valve':
    case 'untap':
      return tapped(parts, next);
    case 'run':
    case 'detach':
      return [...freed(parts), { do: 'attach', device: pick(PUMPS, next), onto: pick(INLETS, next) }];
    case 'attach':
    case 'tap':
      return freed(parts);
    case 'zero':
      return COUPLED.map((hose): Command => ({ do: 'coupler', hose, to: 'shut' }));
    case 'shake':
      return [...parts.cans.keys()].map((can): Command => ({ do: 'place', can, at: 'hand' }));
    default:
      return [HOOD];
  }
}

const PUMPS = ['recovery-machine', 'vacuum-pump'] as const;

function undoAPlace({ places }: PlantParts, next: Draw): Command[] {
  return [HOOD, { do: 'open-loop', part: pick(places, next).id }];
}

function portOn({ ports }: PlantParts, side: 'low' | 'high'): string {
  return [...ports.values()].find((port) => port.side === side)?.id ?? '';
}

/** No hose on any port. */
function unhooked({ desk }: PlantParts): Command[] {
  return Object.entries(desk.hoses)
    .filter(([, { port }]) => port !== null)
    .map(([hose]): Command => ({ do: 'uncouple', hose }));
}

/** Nothing on a port, not even its cap, nor over it. */
function bare({ desk }: PlantParts, port: string): Command[] {
  const on = Object.entries(desk.hoses).find(([, hose]) => hose.port === port);
  return [
    ...(on ? [{ do: 'uncouple', hose: on[0] } as const] : []),
    ...(desk.covers[port] ? [{ do: 'cover', port, to: 'off' } as const] : []),
    { do: 'cap', port, to: 'off' },
  ];
}

function hooked(parts: PlantParts, hose: HoseId): Command[] {
  const port = portOn(parts, hose === 'gauge-high' ? 'high' : 'low');
  return [
    HOOD,
    ...bare(parts, port),
    { do: 'couple', hose, port, route: '' },
    { do: 'coupler', hose, to: 'open' },
  ];
}

/** The inlets of the hoses empty. */
function freed({ desk }: PlantParts): Command[] {
  const cans = Object.entries(desk.cans).filter(([, { onto }]) => onto !== null);
  const devices = Object.entries(desk.service.devices).filter(([, { onto }]) => onto !== null);
  return [
    ...cans.map(([can]): Command => ({ do: 'untap', can })),
    ...devices.map(([device]): Command => ({ do: 'detach', device })),
  ];
}

function tapped(parts: PlantParts, next: Draw): Command[] {
  return [...freed(parts), { do: 'tap', can: pick([...parts.cans.keys()], next), onto: pick(INLETS, next) }];
}

function oilWay(parts: PlantParts, next: Draw): Command[] {
  const onto = pick(INLETS, next);
  return [
    ...freed(parts),
    ...hooked(parts, onto === 'charging' ? 'charging' : 'gauge-low'),
    { do: 'attach', device: 'oil-injector', onto },
    { do: 'manifold', side: 'low', turn: 16 },
  ];
}
