/** What the place where a scenario is set says about a rule of the law, for the debrief: its own rule and no other place's. */
import type { Act, Permission } from '../../../shared/schema/jurisdiction';
import type { ScenarioData } from '../../../shared/schema/scenario';
import { jurisdictionOf } from './jurisdictions';

const ACT_OF: Readonly<Record<string, Act>> = {
  lawService: 'service',
  lawCan: 'buy-can',
  lawCharge: 'charge',
  lawTopUp: 'top-up',
  lawLeakFilled: 'fill-leaking',
  lawRecover: 'recover',
  lawOldGas: 'handle-r12',
  lawConvert: 'convert',
  lawOtherGas: 'change-gas',
};

/** The act a rule of the law is about; undefined for any other rule. */
export const actOf = (rule: string): Act | undefined => ACT_OF[rule];

/** Null for a rule that is none of the law, and where no place is told. */
export function ruleOfPlace(
  rule: string,
  { jurisdiction }: Pick<ScenarioData, 'jurisdiction'>,
): Permission | null {
  const act = actOf(rule);
  if (act === undefined || jurisdiction === undefined) return null;
  const { known, acts } = jurisdictionOf(jurisdiction);
  return known ? acts[act] : null;
}
