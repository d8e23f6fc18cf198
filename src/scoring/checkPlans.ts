/**
 * A scenario's own plans, played: the solution has to reach 95 without a refused line or a critical fault, carelessness
 * and doing nothing have to fail. What the solution meets on its way is looked at too: a charge nobody would call one,
 * a trip of the high-pressure switch, numbers that are none.
 */
import type { PlanLine } from '../../shared/schema/plan';
import type { Findings } from '../session/check/findings';
import { openRecorded } from '../session/openRecorded';
import { playPlan } from '../session/plan/playPlan';
import type { Scenario } from '../session/scenario/scenario';
import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { isWordId, say, word } from '../words/words';
import { repairShown } from './repairShown';
import { sayFinding } from './sayFinding';
import { type Score, score } from './score';

const SOLUTION_MARK = 95;
const SEED = 1;

export function checkPlans(
  scenario: Scenario,
  findings: Findings,
  onPlan: (plan: 'solution' | 'careless' | 'nothing') => void = () => undefined,
  write: WriteQuantity = writeMetric,
): void {
  const { plans } = scenario.data;
  onPlan('solution');
  const solution = play(scenario, plans.solution, 'solution', findings);
  if (solution.score < SOLUTION_MARK || !solution.passed) {
    const lost = solution.findings.filter(({ severity }) => severity !== null);
    const broken =
      lost.map((one) => `${one.rule}: ${sayFinding(one, write)}`).join(' ') || word('check.none');
    const message = word('check.solutionLow', {
      score: String(solution.score),
      mark: String(SOLUTION_MARK),
      broken,
    });
    findings.error(['plans', 'solution'], 'SCN201', message);
  }
  for (const plan of ['careless', 'nothing'] as const) {
    onPlan(plan);
    const { passed, score: points } = play(scenario, plans[plan], plan, findings);
    if (passed)
      findings.error(['plans', plan], 'SCN202', word('check.passes', { plan, score: String(points) }));
  }
}

function play(scenario: Scenario, lines: readonly PlanLine[], plan: string, findings: Findings): Score {
  const { core, record } = openRecorded(scenario, 'assessed', SEED);
  const told = new Set<string>();
  let shown = false;
  for (const { place, words, reason, params } of playPlan(core, lines)) {
    const path = ['plans', plan, ...place];
    // a line that is repeated is told once
    if (told.has(path.join())) continue;
    told.add(path.join());
    const why = isWordId(reason) ? say({ id: reason, values: params }) : reason;
    const refused = word('check.refused', { line: words, reason: why });
    const isShut = reason === 'refusal.loopShut' && !shown;
    if (isShut) shown = true;
    const message = isShut ? withRepair(refused, scenario.data.vehicle) : refused;
    if (plan === 'solution') findings.error(path, 'SCN203', message);
    else findings.warning(path, 'SCN203', message);
  }
  if (core.view().phase !== 'debrief')
    findings.error(['plans', plan], 'SCN204', word('check.unfinished', { plan }));
  return score(record(), scenario);
}

const withRepair = (what: string, vehicle: string): string =>
  word('check.repairShown', { what, id: repairShown(vehicle) });
