/** A rubric as it is told before a session: domains with their weight, and in each what is asked for. */
import type { Domain } from '../../shared/schema/domains';
import { DOMAINS } from '../../shared/schema/domains';
import type { Rule } from '../../shared/schema/rubric';

export interface AskedRule {
  readonly id: string;
  readonly critical: boolean;
}

export interface RubricOutline {
  readonly passMark: number;
  readonly domains: readonly {
    readonly id: Domain;
    readonly weight: number;
    readonly rules: readonly AskedRule[];
  }[];
}

export function rubricOutline(
  rules: readonly Rule[],
  weights: Readonly<Record<Domain, number>>,
  passMark: number,
): RubricOutline {
  const asked = (domain: Domain): AskedRule[] =>
    rules
      .filter((rule) => rule.domain === domain)
      .map(({ id, severity }) => ({ id, critical: severity === 'critical' }));
  return { passMark, domains: DOMAINS.map((id) => ({ id, weight: weights[id], rules: asked(id) })) };
}
