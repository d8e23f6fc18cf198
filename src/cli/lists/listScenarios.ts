/** Scenarios: what the shelf says of them. Never the fault. */
import { scenarios } from '../../session/scenario/library';

export const listScenarios = () =>
  scenarios.map(({ data, hash }) => ({
    id: data.id,
    title: data.title,
    vehicle: data.vehicle,
    level: data.level,
    minutes: data.minutes,
    tasks: data.tasks,
    plans: Object.keys(data.plans),
    hash,
  }));
