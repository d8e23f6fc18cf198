/**
 * What happened in the last minutes, as marks of a strip and as rows: hoses, valves, engine and switches one by one and
 * numbered, clicks of the clutch only counted.
 */
import type { LaneMark, MarkKind } from '../instruments/StripLane';
import { STEPS_PER_SECOND } from '../session/clock';
import type { ToldHappening } from './sessionModel';

const KINDS: Readonly<Record<string, MarkKind>> = {
  coupled: 'hose',
  uncoupled: 'hose',
  'can-tapped': 'hose',
  'can-untapped': 'hose',
  'device-attached': 'hose',
  'device-detached': 'hose',
  'hose-caught': 'hose',
  'coupler-opened': 'valve',
  'coupler-shut': 'valve',
  'can-opened': 'valve',
  'can-shut': 'valve',
  'tank-opened': 'valve',
  'tank-shut': 'valve',
  sprayed: 'valve',
  'gauge-zeroed': 'valve',
  'engine-started': 'engine',
  'engine-stopped': 'engine',
  'device-started': 'engine',
  'device-stopped': 'engine',
  'high-pressure-trip': 'trip',
  'relief-opened': 'trip',
  'thermal-trip': 'trip',
  'compressor-seized': 'trip',
  'clutch-in': 'clutch',
  'clutch-out': 'clutch',
};

export interface HistoryMark extends LaneMark {
  readonly said: string;
}

export function historyMarks(happened: readonly ToldHappening[]): HistoryMark[] {
  let number = 0;
  return happened.flatMap(({ id, step, said }) => {
    const kind = KINDS[id];
    if (kind === undefined) return [];
    if (kind !== 'clutch') number++;
    const second = step / STEPS_PER_SECOND;
    return [{ second, kind, number: kind === 'clutch' ? null : number, said }];
  });
}
