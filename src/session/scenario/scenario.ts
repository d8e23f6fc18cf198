/**
 * A scenario ready to be played: its data as written, a hash of them, the rules that hold in it, and what the session core
 * needs. Texts stay in the data; nothing is looked up later.
 */
import { DOMAINS, type Domain } from '../../../shared/schema/domains';
import type { Rubric, Rule } from '../../../shared/schema/rubric';
import type { ScenarioData } from '../../../shared/schema/scenario';
import { hashText } from '../../numerics/hash';
import { nearest } from '../../words/nearest';
import { canonicalJson } from '../canonicalJson';
import { standingOf } from '../law/standing';
import type { Answer } from '../record/recorder';
import type { SessionJob } from '../sessionRun';

export interface Scenario {
  readonly data: ScenarioData;
  readonly hash: string;
  readonly rules: readonly Rule[];
  readonly weights: Readonly<Record<Domain, number>>;
  readonly job: SessionJob;
  readonly answer: Answer;
}

const DEFAULT_WEIGHTS: Readonly<Record<Domain, number>> = {
  safety: 25,
  finding: 15,
  connecting: 15,
  charging: 20,
  diagnosis: 25,
};

/** Throws `RangeError` where the scenario names a rubric or a rule that is not there. */
export function scenarioOf(data: ScenarioData, rubrics: ReadonlyMap<string, Rubric>): Scenario {
  const rules = rulesOf(data, rubrics);
  const hash = hashText(canonicalJson({ data, rules }));
  return {
    data,
    hash,
    rules,
    weights: weightsOf(data),
    job: {
      scenarioId: data.id,
      scenarioHash: hash,
      hintLevels: data.hints.length,
      deliveries: data.deliver.map(({ id, done }) => ({ id, done })),
      criticals: rules.flatMap(stopsAt),
      standing: standingOf(data),
    },
    answer: { ...data.answer, hidden: [...new Set(data.faults.map(({ fault }) => fault))] },
  };
}

/** Practice stops where a critical prohibition is broken, if it is asked of anybody here. */
function stopsAt(rule: Rule): SessionJob['criticals'] {
  if (!('never' in rule) || rule.severity !== 'critical') return [];
  const { id, asked, never, quotes } = rule;
  return [{ id, never: asked === undefined ? never : { all: [asked, never] }, quotes }];
}

/** Rules of the rubrics it uses, less those it drops, and its own. A rule of its own replaces one of the same id. */
export function rulesOf(
  { rubric }: Pick<ScenarioData, 'rubric'>,
  rubrics: ReadonlyMap<string, Rubric>,
): Rule[] {
  const own = rubric.add ?? [];
  const used = rubric.use.flatMap((id) => {
    const found = rubrics.get(id);
    if (!found) throw new RangeError(unknown('rubric', id, rubrics.keys()));
    return found.rules;
  });
  const dropped = new Set(rubric.drop ?? []);
  for (const id of dropped) {
    if (!used.some((rule) => rule.id === id))
      throw new RangeError(
        unknown(
          'rule',
          id,
          used.map((rule) => rule.id),
        ),
      );
  }
  const replaced = new Set(own.map(({ id }) => id));
  return [...used.filter(({ id }) => !dropped.has(id) && !replaced.has(id)), ...own];
}

function unknown(what: string, id: string, known: Iterable<string>): string {
  const near = nearest(id, known);
  return `no ${what} "${id}"${near === undefined ? '' : `; did you mean "${near}"?`}`;
}

/** Weights as given, brought to a sum of 100. */
function weightsOf({ rubric }: ScenarioData): Record<Domain, number> {
  const given = { ...DEFAULT_WEIGHTS, ...rubric.weights };
  const sum = DOMAINS.reduce((total, domain) => total + given[domain], 0);
  return Object.fromEntries(DOMAINS.map((domain) => [domain, (100 * given[domain]) / sum])) as Record<
    Domain,
    number
  >;
}
