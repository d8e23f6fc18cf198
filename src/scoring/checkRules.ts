/** Rules of a scenario against the signals its car has; its own rules also against the words they are told in. */
import type { Condition } from '../../shared/schema/condition';
import type { YamlPath } from '../../shared/schema/readYaml';
import type { Rule } from '../../shared/schema/rubric';
import type { Plant } from '../plant/plantPort';
import { checkCondition, unitMeantFor } from '../session/check/checkCondition';
import { type Findings, withNear } from '../session/check/findings';
import type { SignalTable } from '../session/conditions/moment';
import { valueFor } from '../session/conditions/valueInUnit';
import { measureList } from '../session/record/measures';
import type { Scenario } from '../session/scenario/scenario';
import { sessionSignals } from '../session/sessionSignals';
import { QuantityError } from '../units/quantity';
import { word } from '../words/words';
import { checkTold } from './checkTold';
import { compileRule } from './compileRule';

export function checkRules(
  { rules, data }: Pick<Scenario, 'rules' | 'data'>,
  plant: Plant,
  findings: Findings,
): void {
  const table = { signals: [...plant.signals, ...sessionSignals(plant)] };
  const known = [...table.signals.map(({ id }) => id), ...measureList.map(({ id }) => id)];
  const own = data.rubric.add ?? [];
  let drop: string | null = null;
  for (const rule of rules) {
    const at = own.findIndex(({ id }) => id === rule.id);
    const path = at < 0 ? ['rubric', 'use'] : ['rubric', 'add', at];
    const before = findings.list.length;
    if (at >= 0) checkConditions(rule, path, table, findings);
    const reason = findings.list.length === before ? reasonAgainst(rule, table) : null;
    if (reason !== null) {
      const told = { rule: rule.id, reason };
      if (at < 0) drop ??= toDrop(rules, data, table);
      const message =
        drop === null || at >= 0 ? word('check.rule', told) : word('check.ruleWithout', { ...told, drop });
      findings.error(path, 'SCN130', message);
    }
    for (const [name, source] of Object.entries(rule.quotes).filter(([, one]) => !known.includes(one))) {
      const what = word('check.quotes', { rule: rule.id, source });
      findings.unknown(at < 0 ? path : [...path, 'quotes', name], 'SCN131', what, source, known);
    }
    const untold = checkTold(rule);
    if (untold?.kind === 'unspoken') findings.error(path, 'SCN132', unspoken(rule, untold.ways));
    if (untold?.kind === 'unequal') {
      const message = unequal(rule, untold.quotes, untold.places);
      findings.error(at < 0 ? path : [...path, 'quotes'], 'SCN134', message);
    }
  }
}

/** The conditions of a rule of the scenario's own, each told where it stands. */
function checkConditions(rule: Rule, path: YamlPath, table: SignalTable, findings: Findings): void {
  const told = {
    code: 'SCN130' as const,
    tell: (reason: string) => word('check.rule', { rule: rule.id, reason }),
  };
  const look = (condition: Condition | undefined, ...keys: readonly string[]): void => {
    if (condition !== undefined) checkCondition(condition, [...path, ...keys], table, findings, told);
  };
  look(rule.needs, 'needs');
  look(rule.asked, 'asked');
  if ('never' in rule) look(rule.never, 'never');
  if ('done' in rule) look(rule.done, 'done');
  if ('before' in rule) {
    look(rule.before.first, 'before', 'first');
    look(rule.before.then, 'before', 'then');
  }
  if ('while' in rule) {
    look(rule.while.condition, 'while', 'condition');
    look(rule.while.during, 'while', 'during');
  }
  if ('outcome' in rule) checkOutcome(rule, path, findings);
}

/** A measure there is, and two ends in a unit of it. */
function checkOutcome(rule: Extract<Rule, { outcome: unknown }>, path: YamlPath, findings: Findings): void {
  const { measure } = rule.outcome;
  const spec = measureList.find(({ id }) => id === measure);
  if (spec === undefined) {
    const known = measureList.map(({ id }) => id);
    const what = word('check.noMeasure', { rule: rule.id, measure });
    findings.unknown([...path, 'outcome', 'measure'], 'SCN130', what, measure, known);
    return;
  }
  for (const end of ['full', 'zero'] as const) {
    const given = rule.outcome[end];
    const reason = reasonOf(() => valueFor(spec, given));
    if (reason === null) continue;
    const to = unitMeantFor(spec, given);
    const meant = to === undefined ? null : { part: String(given), to };
    const said = word('check.rule', { rule: rule.id, reason });
    const message = to === undefined ? said : withNear(said, to);
    findings.error([...path, 'outcome', end], 'SCN130', message, meant);
  }
}

/** What `rubric.drop` has to hold so that no ready-made rule asks for what this car and bench do not have. */
function toDrop(rules: Scenario['rules'], { rubric }: Scenario['data'], table: SignalTable): string {
  const own = (rubric.add ?? []).map(({ id }) => id);
  const without = rules.filter(({ id }) => !own.includes(id)).filter((rule) => !compiles(rule, table));
  return [...(rubric.drop ?? []), ...without.map(({ id }) => id)].join(', ');
}

const compiles = (rule: Rule, table: SignalTable): boolean => reasonAgainst(rule, table) === null;

const reasonAgainst = (rule: Rule, table: SignalTable): string | null =>
  reasonOf(() => compileRule(rule, table));

function reasonOf(read: () => unknown): string | null {
  try {
    read();
    return null;
  } catch (error) {
    if (error instanceof RangeError || error instanceof QuantityError) return error.message;
    throw error;
  }
}

const unspoken = ({ id }: Rule, ways: readonly string[]): string =>
  word('check.unspoken', { rule: id, words: ways.map((way) => `rules.${id}.${way}`).join(', ') });

const unequal = ({ id }: Rule, quotes: readonly string[], places: readonly string[]): string =>
  word('check.unequal', {
    rule: id,
    quotes: quotes.join(', '),
    places: places.join(', ') || word('check.none'),
  });
