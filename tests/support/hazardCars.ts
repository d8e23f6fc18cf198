/** Cars, benches and the first lines of plans for tests of what goes wrong. */
import type { ScenarioData } from '../../shared/schema/scenario';
import { scenarioById } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';
import { type Scenario, scenarioOf } from '../../src/session/scenario/scenario';

export interface HazardPlan {
  readonly rule: string;
  readonly on: Partial<ScenarioData>;
  readonly broken: readonly string[];
  /** What comes near; on another car where `nearOn` says so. */
  readonly near: readonly string[];
  readonly nearOn?: Partial<ScenarioData>;
}

export const CAN = { id: 'can-1', net: '340 g', printed: '369 g', tare: '110 g' };
export const HOSES = ['charging', 'gauge-set'] as const;
export const BENCH = { hoses: [...HOSES], cans: [CAN] };
export const bench = (more: Partial<ScenarioData['bench']>) => ({ bench: { ...BENCH, ...more } });
export const holding = (
  refrigerant: 'R-134a' | 'R-12' | 'R-1234yf',
  charge: string,
  state: 'equalised' | 'soaked' = 'equalised',
) => ({
  contents: { refrigerant, charge, state, history: 'Invented.' },
});
export const SEDAN = { vehicle: 'sedan', ...holding('R-134a', '720 g') } as const;
export const PICKUP = { vehicle: 'pickup', ...holding('R-12', '1000 g') } as const;
export const COMPACT = { vehicle: 'compact', ...holding('R-1234yf', '450 g') } as const;
export const ELECTRIC = { vehicle: 'electric', ...holding('R-1234yf', '530 g') } as const;

/** A sound hatchback in a garage of the usual size, and a person who is trained for gas that burns. */
export function hazardScenario(on: Partial<ScenarioData>): Scenario {
  const { data } = scenarioById('warm-at-the-lights');
  const { varies: _, ...rest } = data;
  return scenarioOf(
    {
      ...rest,
      id: 'hazard',
      vehicle: 'hatchback',
      ...holding('R-134a', '480 g'),
      weather: { temperature: '22 degC', humidity: '45%' },
      person: 'certified',
      faults: [],
      papers: [],
      bench: BENCH,
      rubric: { use: ['service', 'hazards'] },
      ...on,
    },
    rubrics,
  );
}

export const DRESSED = ['begin', 'wear goggles', 'wear gloves', 'wear overall', 'door open'];
export const LOW_OPEN = ['cap port-b off', 'couple charging port-b', 'coupler charging open'];
/** Low and high port of the cars with two ports: a is low but on the hatchback. */
export const GAUGES = ['cap port-a off', 'couple gauge-low port-a', 'coupler gauge-low open'];
/** Undone under pressure and done up again. */
export const letOut = (time: string): string[] => [
  'open-loop suction',
  `run-on ${time}`,
  'close-loop suction',
];
export const recovering = (time: string): string[] => [
  ...GAUGES,
  ...['manifold low 16', 'attach recovery-machine utility', 'run recovery-machine on', `run-on ${time}`],
];
