/** The machine as a list: every state, and every transition it declares. Read from the machine itself. */
import type { AnyStateNode } from 'xstate';
import { sessionMachine } from './sessionMachine';

export interface ChartTransition {
  /** `session` or a region of the work. */
  readonly region: string;
  readonly from: string;
  readonly on: string;
  readonly to: string;
}

export interface Chart {
  readonly states: readonly { readonly region: string; readonly state: string }[];
  readonly transitions: readonly ChartTransition[];
}

export function chartOfSession(): Chart {
  const nodes = nodesUnder(sessionMachine.root);
  return {
    states: nodes.map((node) => ({ region: regionOf(node), state: node.key })),
    transitions: nodes.flatMap(transitionsOf),
  };
}

/** States, in order; a region is no state, its states are. */
function nodesUnder(node: AnyStateNode): AnyStateNode[] {
  return Object.values(node.states).flatMap((child) => {
    const inner = nodesUnder(child);
    return node.type === 'parallel' ? inner : [child, ...inner];
  });
}

const regionOf = (node: AnyStateNode): string =>
  node.parent === sessionMachine.root ? 'session' : (node.parent?.key ?? '');

function transitionsOf(node: AnyStateNode): ChartTransition[] {
  const declared = [...node.transitions.values()].flat();
  const always = node.always ?? [];
  return [...declared, ...always].flatMap(({ eventType, target }) =>
    (target ?? []).map((to) => ({
      region: regionOf(node),
      from: node.key,
      on: eventType || 'always',
      to: to.key,
    })),
  );
}
