/** Where the lines of a whole repair are shown: the scenarios do it, the example on the page for authors can be played. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatPage } from '../../shared/build/formatPage';
import type { PlanLine } from '../../shared/schema/plan';
import { readYaml } from '../../shared/schema/readYaml';
import { vehicleIds } from '../../src/loop/car/vehicles';
import { checkScenario } from '../../src/scoring/checkScenario';
import { repairShown } from '../../src/scoring/repairShown';
import { score } from '../../src/scoring/score';
import { openRecorded } from '../../src/session/openRecorded';
import { singleLines } from '../../src/session/plan/planWords';
import { playPlan } from '../../src/session/plan/playPlan';
import { scenarioById } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';

/** In this order; the recovery may be another person's. */
const STEPS = [
  /^(run recovery-machine on|arrange recovery)$/,
  /^open-loop /,
  /^replace /,
  /^close-loop /,
  /^run vacuum-pump on$/,
  /^tank-valve charging-tank [1-9]/,
];

function isWhole(lines: readonly PlanLine[]): boolean {
  const words = singleLines(lines).map((line) => (typeof line === 'string' ? line : ''));
  let from = 0;
  return STEPS.every((step) => {
    const at = words.findIndex((line, index) => index >= from && step.test(line));
    from = at + 1;
    return at >= 0;
  });
}

function example(): readonly PlanLine[] {
  const section = formatPage().text.split('### Repair behind the joints\n')[1] ?? '';
  const [, snippet = ''] = /```yaml\n([\s\S]*?)```/.exec(section) ?? [];
  return (readYaml('page.yaml', snippet).data as { plans: { solution: PlanLine[] } }).plans.solution;
}

describe('the lines of a whole repair', () => {
  it.each(vehicleIds)('are in the solution that is named for the %s', (vehicle) => {
    const { data } = scenarioById(repairShown(vehicle));
    expect(isWhole(data.plans.solution)).toBe(true);
    if (vehicle !== 'electric') expect(data.vehicle).toBe(vehicle);
  });

  it('are on the page for authors, and nothing of them is refused', () => {
    const lines = example();
    expect(isWhole(lines)).toBe(true);
    const scenario = scenarioById('cold-then-nothing');
    const { core, record } = openRecorded(scenario, 'assessed', 1);
    expect([...playPlan(core, lines)]).toEqual([]);
    expect(core.view().phase).toBe('debrief');
    const { findings } = score(record(), scenario);
    const rules = ['recoveredDeep', 'evacuatedDeep', 'vacuumHeld', 'chargedToLabel'];
    const earned = findings.filter(({ rule }) => rules.includes(rule));
    const full = earned.filter((one) => one.severity === null && one.earned === one.possible);
    expect(full.map(({ rule }) => rule).sort()).toEqual([...rules].sort());
  });

  it('are pointed at where a part is renewed with its joints done up, once a plan', () => {
    const file = 'scenarios/stone-chip.yaml';
    const text = readFileSync(file, 'utf8');
    const shut = text.replace(/ {4}- (open|close)-loop \w+\n/g, '');
    expect(shut).not.toBe(text);
    const told = checkScenario(file, shut, rubrics).filter(
      ({ code, message }) => code === 'SCN203' && message.includes('joints are done up'),
    );
    expect(told.length).toBeGreaterThan(1);
    expect(told[0].message).toMatch(/first, when nothing is left in it\. .*"stone-chip".*FORMAT\.md/);
    expect(told.filter(({ message }) => message.includes('FORMAT.md'))).toHaveLength(1);
  });
});
