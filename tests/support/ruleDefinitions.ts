/**
 * Every way a rule is written that ships, by a key: its id, and where scenarios write one id in more ways than one, the
 * first scenario with that way before it ("weighed-in/leakMended"). Points, sentences and sources make no other way.
 */
import type { Rubric, Rule } from '../../shared/schema/rubric';
import { canonicalJson } from '../../src/session/canonicalJson';
import type { Scenario } from '../../src/session/scenario/scenario';

interface Written {
  readonly rule: Rule;
  /** Nothing where it stands in a rubric. */
  readonly scenario?: string;
}

export function ruleDefinitions(
  rubrics: readonly Rubric[],
  scenarios: readonly Scenario[],
): ReadonlyMap<string, Rule> {
  const ways = new Map<string, Map<string, Written>>();
  const written: readonly Written[] = [
    ...rubrics.flatMap(({ rules }) => rules.map((rule) => ({ rule }))),
    ...scenarios.flatMap(({ data }) => (data.rubric.add ?? []).map((rule) => ({ rule, scenario: data.id }))),
  ];
  for (const one of written) {
    const ofId = ways.get(one.rule.id) ?? new Map<string, Written>();
    const way = wayOf(one.rule);
    if (!ofId.has(way)) ofId.set(way, one);
    ways.set(one.rule.id, ofId);
  }
  return new Map([...ways.values()].flatMap((ofId) => keyed([...ofId.values()])));
}

function keyed(written: readonly Written[]): [string, Rule][] {
  return written.map(({ rule, scenario }) => [
    written.length === 1 || scenario === undefined ? rule.id : `${scenario}/${rule.id}`,
    rule,
  ]);
}

function wayOf({ id, domain, points, severity, quotes, references, tasks, ...way }: Rule): string {
  return canonicalJson(way);
}
