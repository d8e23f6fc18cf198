/** A plan of a shipped scenario, out of its file. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import type { PlanLine } from '../../schema/plan.ts';
import { projectFolder } from '../folders.ts';

export function planOf(scenario: string, plan: 'solution' | 'careless' | 'nothing'): readonly PlanLine[] {
  const data = parse(readFileSync(join(projectFolder, `scenarios/${scenario}.yaml`), 'utf8'));
  return data.plans[plan];
}
