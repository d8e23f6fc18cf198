/** A condition part by part, so that each slip in it is told where it stands: a signal, an event, a value with its unit. */
import type { Comparison, Condition } from '../../../shared/schema/condition';
import type { ProblemCode } from '../../../shared/schema/problemCodes';
import type { YamlPath } from '../../../shared/schema/readYaml';
import { unitMeant } from '../../../shared/schema/unitMeant';
import type { SignalSpec } from '../../plant/signalTypes';
import { nearest } from '../../words/nearest';
import { ConditionError, compileCondition, matchingSignals } from '../conditions/compileCondition';
import { eventIds } from '../conditions/eventIds';
import type { SignalTable } from '../conditions/moment';
import { kindOf } from '../conditions/valueInUnit';
import { type Findings, type Meant, withNear } from './findings';

const BOUNDS = ['over', 'under', 'is'] as const;

/** `tell` puts what is said into a sentence of the rule or delivery it belongs to. */
export function checkCondition(
  condition: Condition,
  path: YamlPath,
  table: SignalTable,
  findings: Findings,
  { code, tell }: { readonly code: ProblemCode; readonly tell: (reason: string) => string },
): void {
  const all = (parts: readonly Condition[], at: YamlPath): void => {
    for (const [index, part] of parts.entries()) walk(part, [...at, index]);
  };
  const walk = (part: Condition, at: YamlPath): void => {
    if ('all' in part) all(part.all, [...at, 'all']);
    else if ('any' in part) all(part.any, [...at, 'any']);
    else if ('not' in part) walk(part.not, [...at, 'not']);
    else {
      const reason = reasonAgainst(part, table);
      if (reason === null) return;
      const { key, meant } = whereIn(part, table);
      const isTold = meant === null || reason.includes(meant.to);
      const said = isTold ? reason : withNear(reason, meant.to);
      findings.error([...at, key], code, tell(said), meant);
    }
  };
  walk(condition, path);
}

function reasonAgainst(part: Condition, table: SignalTable): string | null {
  try {
    compileCondition(part, table);
    return null;
  } catch (error) {
    if (error instanceof ConditionError) return error.message;
    throw error;
  }
}

function whereIn(
  part: Condition,
  table: SignalTable,
): { readonly key: string; readonly meant: Meant | null } {
  if ('event' in part) return { key: 'event', meant: nearestOf(part.event, eventIds) };
  const comparison = part as Comparison;
  const ids = table.signals.map(({ id }) => id);
  if (!isKnown(comparison.signal, table)) return { key: 'signal', meant: nearestOf(comparison.signal, ids) };
  const key = BOUNDS.find((bound) => comparison[bound] !== undefined) ?? 'is';
  return { key, meant: valueMeant(comparison, comparison[key] as string | number, table) };
}

function isKnown(pattern: string, table: SignalTable): boolean {
  try {
    return matchingSignals(pattern, table).length > 0;
  } catch (error) {
    if (error instanceof ConditionError) return false;
    throw error;
  }
}

function nearestOf(part: string, known: readonly string[]): Meant | null {
  const to = nearest(part, known);
  return to === undefined ? null : { part, to };
}

function valueMeant({ signal }: Comparison, given: string | number, table: SignalTable): Meant | null {
  const spec = table.signals[matchingSignals(signal, table)[0]];
  const to = spec.unit === 'bool' ? nearest(String(given), ['on', 'off']) : unitMeantFor(spec, given);
  return to === undefined ? null : { part: String(given), to };
}

/** The value in a unit that its signal or measure is told in. */
export function unitMeantFor(
  spec: Pick<SignalSpec, 'id' | 'unit'>,
  given: string | number,
): string | undefined {
  try {
    return unitMeant(given, kindOf(spec));
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
