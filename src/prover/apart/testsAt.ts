/** Every test there is for a car, as the table lists them: what each costs from the start, and whether the bench has it. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { TestOf } from '../apartTable';
import type { Forecast } from '../forecast/forecastOf';
import { isOnBench, minutesAlone } from '../know/testsOf';

export const testsAt = ({ probes, stages }: Forecast, bench: ScenarioData['bench']): readonly TestOf[] =>
  probes.map((probe) => ({
    id: probe.id,
    tool: probe.tool,
    state: probe.stage,
    unit: probe.unit,
    costMinutes: minutesAlone(probe) + (stages.find(({ id }) => id === probe.stage)?.minutes ?? 0),
    isOnBench: isOnBench(probe, bench),
  }));
