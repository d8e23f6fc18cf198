/** Probes as they are done: those of one sample are one test; the rest by themselves. With what a test takes beforehand. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { SET_UP_MINUTES } from '../../suspects/testCosts';
import type { Probe } from '../forecast/probe';

export interface Test {
  readonly id: string;
  readonly probes: readonly Probe[];
  /** Once everything is there for it. */
  readonly minutes: number;
  readonly needsGauges: boolean;
}

export const SAMPLE = 'sample';
const SET_UP: Partial<Readonly<Record<Probe['tool'], number>>> = {
  identifier: SET_UP_MINUTES.sample,
  'recovery-machine': SET_UP_MINUTES.recovery,
  detector: SET_UP_MINUTES.search,
};
const SEARCHERS = ['detector', 'soap', 'uv-lamp'] as const;

/** Tests that this bench has what they take for. */
export function testsOf(probes: readonly Probe[], bench: ScenarioData['bench']): readonly Test[] {
  const there = probes.filter((probe) => isOnBench(probe, bench));
  const gases = there.filter(({ tool }) => tool === 'identifier');
  const rest = there.filter(({ tool }) => tool !== 'identifier');
  return [
    ...rest.map(
      (probe): Test => ({
        id: probe.id,
        probes: [probe],
        minutes: minutesAlone(probe),
        needsGauges: probe.unit === 'Pa' || probe.tool === 'recovery-machine',
      }),
    ),
    ...(gases.length > 0
      ? [{ id: SAMPLE, probes: gases, minutes: SET_UP_MINUTES.sample + minutesOf(gases), needsGauges: false }]
      : []),
  ];
}

/** Of a test that is this one probe. */
export const minutesAlone = ({ tool, minutes }: Probe): number => minutes + (SET_UP[tool] ?? 0);

const minutesOf = (probes: readonly Probe[]): number => probes.reduce((sum, { minutes }) => sum + minutes, 0);

export function isOnBench({ tool }: Probe, { hoses, tools = [] }: ScenarioData['bench']): boolean {
  switch (tool) {
    case 'eyes':
    case 'thermometer':
      return true;
    case 'charging-hose':
      return hoses.length > 0;
    case 'gauge-set':
      return hoses.includes('gauge-set');
    case 'recovery-machine':
      return tools.includes(tool) && hoses.includes('gauge-set');
    case 'detector':
      return SEARCHERS.some((one) => tools.includes(one));
    default:
      return tools.includes(tool);
  }
}
