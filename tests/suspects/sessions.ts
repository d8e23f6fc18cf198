/** Short sessions on the saloon at the lights, with the fault that a test wants hidden, or none. */
import type { PlanLine } from '../../shared/schema/plan';
import type { PlantOptions } from '../../src/plant/buildPlant';
import type { SessionLog } from '../../src/session/corePort';
import { openRecorded } from '../../src/session/openRecorded';
import { playPlan } from '../../src/session/plan/playPlan';
import type { SessionRecord } from '../../src/session/record/record';
import { scenarioById } from '../../src/session/scenario/library';
import { plantOptions } from '../../src/session/scenario/plantOptions';
import { rubrics } from '../../src/session/scenario/rubrics';
import { type Scenario, scenarioOf } from '../../src/session/scenario/scenario';

export interface Lived {
  readonly scenario: Scenario;
  readonly log: SessionLog;
  readonly record: SessionRecord;
  readonly options: PlantOptions;
}

export const atTheLights = scenarioById('warm-at-the-lights');

export function withFault(fault: string | null, severity = 1): Scenario {
  const faults = fault === null ? [] : [{ fault, severity }];
  return scenarioOf({ ...atTheLights.data, faults }, rubrics);
}

/** Throws where a line is refused: a test has to know what it played. */
export function live(scenario: Scenario, lines: readonly PlanLine[], seed = 1): Lived {
  const { core, record } = openRecorded(scenario, 'assessed', seed);
  const [refused] = playPlan(core, lines);
  if (refused) throw new Error(`line ${refused.line} refused: ${refused.reason}`);
  return {
    scenario,
    log: core.log(),
    record: record(),
    options: plantOptions(scenario.data, seed),
  };
}

const connected: readonly PlanLine[] = [
  'begin',
  'zero low',
  'zero high',
  'cap port-a off',
  'couple gauge-low port-a side-middle,fender,mat',
  'coupler gauge-low open',
  'cap port-b off',
  'couple gauge-high port-b corner-front,fender,mat',
  'coupler gauge-high open',
  'door open',
  'windows open',
  'blower 4',
  'probe-air centre-vent',
];

/** Gauges on, nothing running. */
export const atRest: readonly PlanLine[] = [...connected, { 'run-on': '10 s' }];

/** Gauges at rest and after two minutes' running, and looks, `readings` being taken while it runs. */
export const runAndRead = (...readings: readonly PlanLine[]): readonly PlanLine[] => [
  ...connected,
  { 'run-on': '10 s' },
  'note-reading low-gauge',
  'note-reading high-gauge',
  'engine 1500',
  'ac on',
  { 'run-on': '1 min', times: 2 },
  ...readings,
];
export const everyReading = [
  'look fan',
  'note-reading low-gauge',
  'note-reading high-gauge',
  'note-reading air',
] as const;
