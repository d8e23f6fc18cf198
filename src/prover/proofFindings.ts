/**
 * What speaks against a scenario, out of its proof: a solution that does not solve it, a cause that cannot be proven, luck
 * that passes, a look-alike nothing on the bench parts; then what a teacher should know.
 */
import type { YamlPath } from '../../shared/schema/readYaml';
import { NOTHING_WRONG } from '../plant/faultBook';
import { causesIn, suspectOf } from '../suspects/causes';
import { PROVEN } from '../suspects/proven';
import type { Pair } from './apartTable';
import { type FindingCode, findingCodes } from './findingCodes';
import { type Proof, type ProofFinding, SOLUTION_MARK } from './proof';

/** Share of seeds on which who looks at nothing may pass. */
const LUCK = 0.05;
/** Points between the solution's best and worst seed. */
const WIDE_SCORES = 5;
/** The dearest way to the cause over the cheapest. */
const WIDE_COST = 2;
/** Hints before this one say where to look and what it means, not what it is. */
const LAST_HINT = 3;

type Told = Omit<Proof, 'verdict' | 'findings'>;

export function proofFindings(told: Told): readonly ProofFinding[] {
  const found = [
    ...ofSolution(told),
    ...ofKnowing(told),
    ...ofLuck(told),
    ...ofPairs(told),
    ...ofFairness(told),
    ...ofHints(told),
  ];
  return [
    ...found.filter(({ level }) => level === 'error'),
    ...found.filter(({ level }) => level !== 'error'),
  ];
}

const finding = (code: FindingCode, path: YamlPath, values: ProofFinding['values']): ProofFinding => ({
  code,
  level: findingCodes[code],
  path,
  values,
});

function ofSolution({ solved: { solution } }: Told): ProofFinding[] {
  const { scores, low, critical } = solution;
  const path = ['plans', 'solution'];
  return [
    ...(low.length > 0
      ? [finding('PRV101', path, { seeds: low, score: scores.least, mark: SOLUTION_MARK })]
      : []),
    ...(critical.length > 0 ? [finding('PRV102', path, { rules: critical })] : []),
  ];
}

function ofKnowing({ solved: { know } }: Told): ProofFinding[] {
  const runs = know?.runs ?? [];
  const unproven = runs.filter(({ reached, share }) => !reached || share < PROVEN);
  const wrong = runs.filter((run) => !unproven.includes(run) && !run.right);
  const of = (code: FindingCode, path: YamlPath, some: typeof runs): ProofFinding[] =>
    some.length === 0
      ? []
      : [
          finding(code, path, {
            seeds: some.map(({ seed }) => seed),
            claimed: some[0].claimed,
            share: some[0].share,
            charge: some[0].charge,
          }),
        ];
  return [...of('PRV103', ['bench'], unproven), ...of('PRV104', ['answer'], wrong)];
}

function ofLuck({ luck }: Told): ProofFinding[] {
  return luck.flatMap(({ player, isBlind, seeds, passed }) => {
    const values = { player, passed: passed.length, seeds: seeds.length };
    if (isBlind) return passed.length > LUCK * seeds.length ? [finding('PRV105', ['rubric'], values)] : [];
    return passed.length === seeds.length ? [finding('PRV108', ['rubric'], values)] : [];
  });
}

/**
 * Only of what is wrong here: that two others read alike costs nobody anything. Who asked may have come to a severity that
 * the table has no row for.
 */
function ofPairs({ apart, own, guessed, solved: { know } }: Told): ProofFinding[] {
  const listed = apart?.pairs ?? [];
  const met = (know?.runs ?? []).flatMap(({ alike }) => alike ?? []);
  const isNew = ({ a, b }: Pair, at: number): boolean =>
    ![...listed, ...met.slice(0, at)].some(
      (pair) => [pair.a, pair.b].includes(a) && [pair.a, pair.b].includes(b),
    );
  const touching = [...listed, ...met.filter(isNew)].filter(
    ({ a, b }) => own.includes(a) !== own.includes(b),
  );
  const isSound = own.includes(NOTHING_WRONG);
  const certain = own.flatMap(causesIn).filter((cause) => !guessed.includes(cause));
  const enough = guessed.length > 0 ? suspectOf(certain) : null;
  return touching.map((pair) => finding(codeOf(pair, isSound, enough), ['bench'], pairValues(pair, own)));
}

/**
 * A sound car always has look-alikes (a little water, a little too little oil), and calling it sound is right. And where the
 * solution itself calls one of two causes no more than likely, nobody is asked to prove it.
 */
function codeOf({ a, b, decisionDiffers }: Pair, isSound: boolean, enough: string | null): FindingCode {
  if (isSound) return 'PRV112';
  if (enough !== null && [a, b].includes(enough)) return 'PRV113';
  return decisionDiffers ? 'PRV106' : 'PRV107';
}

function pairValues({ a, b, wouldTell }: Pair, own: readonly string[]): ProofFinding['values'] {
  const [cause, other] = own.includes(a) ? [a, b] : [b, a];
  return { cause, other, ...(wouldTell === null ? {} : { test: wouldTell.test, tool: wouldTell.tool }) };
}

function ofFairness({ fairness: { scores, costMinutes } }: Told): ProofFinding[] {
  return [
    ...(scores.most - scores.least > WIDE_SCORES
      ? [finding('PRV109', ['varies'], { least: scores.least, most: scores.most })]
      : []),
    ...(costMinutes !== null && costMinutes.most > WIDE_COST * costMinutes.least
      ? [finding('PRV110', ['varies'], { least: costMinutes.least, most: costMinutes.most })]
      : []),
  ];
}

function ofHints({ worth, own }: Told): ProofFinding[] {
  return (worth?.hints ?? [])
    .filter(({ level, names }) => level < LAST_HINT && names.some((cause) => own.includes(cause)))
    .map(({ level, names }) => finding('PRV111', ['hints', level - 1], { level, names }));
}
