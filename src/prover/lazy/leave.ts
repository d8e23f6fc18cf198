/** The car as it has to be left, and the owner told what one believes: tanks and cans shut, all off, caps on, cans put away. */
import { parseQuantity } from '../../units/quantity';
import type { TidyHands } from './tidyHands';
import { waysOf } from './ways';

const COOL_S = 60;
const WEIGHED_S = 10;

export interface Told {
  readonly charges: boolean;
  readonly refers: boolean;
  /** A fault was named and nothing was done about it. */
  readonly remains: boolean;
}

export function leave(hands: TidyHands, { charges, refers, remains }: Told): void {
  const { give, wait, core, scenario } = hands;
  const cans = core.choices('can');
  give(...cans.map((can) => `can-valve ${can} 0`), 'tank-valve charging-tank 0');
  give('manifold low 0', 'manifold high 0', 'ac off', 'engine 0');
  wait(COOL_S, true);
  for (const { hose, port } of [...waysOf(scenario, charges).hoses].reverse())
    give(`coupler ${hose} shut`, `uncouple ${hose}`, `cap ${port} on`, `cover ${port} on`);
  give('detach charging-tank');
  for (const can of cans) putAway(hands, can);
  give(refers ? 'hand-over goes-to-licensed' : 'hand-over charge-not-proven');
  if (remains) give('hand-over fault-remains');
  give('finish');
}

/** A can that was opened is weighed, marked with what it holds over its empty weight, and stored. */
function putAway({ core, give, wait, sees, scenario: { data } }: TidyHands, can: string): void {
  const { onto } = core.view().cans.find(({ id }) => id === can) ?? { onto: null };
  const written = data.bench.cans.find(({ id }) => id === can);
  if (onto === null || !written) return;
  give(`untap ${can}`, `place ${can} scale`);
  wait(WEIGHED_S, true);
  const grams = Math.round(1000 * (sees('scale.massKg') - parseQuantity(written.tare, 'mass')));
  give(`mark-can ${can} ${Math.max(0, grams)}`, `place ${can} mat`, `store-can ${can}`);
}
