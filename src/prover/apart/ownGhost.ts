/**
 * The car in the bay as a ghost: what the scenario hides, at its own severity; null where that is read as something else, as
 * a leak is read as a short loop.
 */
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { Scenario } from '../../session/scenario/scenario';
import { type GhostSpec, suspectOf } from '../../suspects/causes';
import { hiddenAsRead } from '../forecast/suspectsIn';

export function ownGhost(scenario: Scenario): GhostSpec | null {
  const hidden = hiddenAsRead(scenario);
  if ((scenario.answer.hidden ?? []).length === 0) return { cause: NOTHING_WRONG, severity: 0 };
  const own = scenario.data.faults.filter(({ fault }) => hidden.includes(fault));
  if (own.length === 0 || own.length !== hidden.length) return null;
  const both = hidden.flatMap((cause) =>
    own.filter(({ fault }) => fault === cause).map(({ severity }) => ({ cause, severity })),
  );
  return {
    cause: suspectOf(hidden),
    severity: Math.max(...both.map((one) => one.severity)),
    ...(both.length > 1 ? { both } : {}),
  };
}
