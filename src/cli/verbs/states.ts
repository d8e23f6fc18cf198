/**
 * `states`: the machine of a session, and which of its transitions the shipped plans walk. A transition that no plan
 * walks has a reason, or is a finding.
 */
import { PLANS } from '../../../shared/schema/plan';
import { chartOfSession } from '../../session/controller/chart';
import type { Transition } from '../../session/controller/controller';
import { unwalkedReasons } from '../../session/controller/unwalked';
import { openSession } from '../../session/openSession';
import { playPlan } from '../../session/plan/playPlan';
import { scenarios } from '../../session/scenario/library';
import { isWordId, say } from '../../words/words';
import { defineVerb } from '../verb';

export default defineVerb({
  name: 'states',
  summary: 'verbs.states.summary',
  options: { json: { kind: 'flag', summary: 'cli.json' } },
  run(_call, io) {
    const { states, transitions } = chartOfSession();
    const walked = walkedByPlans();
    const told = transitions.map((transition) => {
      const key = keyOf(transition);
      const plans = walked.get(key) ?? [];
      const reason = plans.length > 0 ? null : reasonOf(key);
      return { ...transition, plans, reason };
    });
    io.json({
      states,
      walked: told.filter(({ plans }) => plans.length > 0).map(({ reason: _, ...rest }) => rest),
      unwalked: told.filter(({ plans }) => plans.length === 0).map(({ plans: _, ...rest }) => rest),
    });
    return told.some(({ plans, reason }) => plans.length === 0 && reason === null) ? 1 : 0;
  },
});

const keyOf = ({ region, from, on, to }: Transition): string => `${region} ${from} ${on} ${to}`;

function reasonOf(key: string): string | null {
  const reason = unwalkedReasons[key];
  const id = `states.${reason ?? ''}`;
  return isWordId(id) ? say({ id } as { id: typeof id }) : null;
}

/** Key of each transition walked -> the plans that walk it. */
function walkedByPlans(): ReadonlyMap<string, string[]> {
  const walked = new Map<string, string[]>();
  for (const scenario of scenarios) {
    for (const plan of PLANS) {
      const name = `${scenario.data.id} ${plan}`;
      const note = (transitions: readonly Transition[]): void => {
        for (const transition of transitions) {
          const plans = walked.get(keyOf(transition)) ?? [];
          if (!plans.includes(name)) walked.set(keyOf(transition), [...plans, name]);
        }
      };
      const core = openSession(scenario, {
        mode: 'assessed',
        seed: 1,
        observe: (seen) => note(seen.transitions),
      });
      playPlan(core, scenario.data.plans[plan]);
      note(core.markScored());
    }
  }
  return walked;
}
