/**
 * Gas put in on the low side, upright and from a warm hand, with the car turning: can after can, until the player has
 * enough or there is no more. Where there are no cans the charging tank's vapour is let in. Looks at nothing itself.
 */
import { startTest } from './testAsPrinted';
import type { TidyHands } from './tidyHands';
import { waysOf } from './ways';

/** A small can is empty after that, held upright. */
const CAN_S = 300;
const PACE_S = 10;
const PURGE_S = 5;

export interface Feeding {
  /** How many cans at most. */
  readonly cans: number;
  /** Looked at every ten seconds; nothing is enough where nothing is said. */
  readonly isEnough?: (hands: TidyHands) => boolean;
}

export function feed(hands: TidyHands, { cans, isEnough = () => false }: Feeding): void {
  const { core, give } = hands;
  const { inlet, hoses } = waysOf(hands.scenario, true);
  const hose = hoses[0]?.hose;
  if (inlet === null || hose === undefined) return;
  startTest(hands);
  const bench = core.choices('can').slice(0, cans);
  for (const can of bench) {
    if (isEnough(hands)) break;
    give(`place ${can} scale`);
    hands.wait(PACE_S);
    give('note-reading scale', `coupler ${hose} shut`, `tap ${can} ${inlet}`, `can-valve ${can} 4`);
    if (give(`purge ${inlet} open`)) hands.wait(PURGE_S);
    give(`purge ${inlet} shut`, `coupler ${hose} open`, `place ${can} hand`, `can-valve ${can} 16`);
    give('manifold low 8');
    letIn(hands, isEnough, can);
    give(`can-valve ${can} 0`, 'manifold low 0');
    if (can !== bench[bench.length - 1]) give(`untap ${can}`);
  }
  if (
    bench.length === 0 &&
    give(`attach charging-tank ${inlet}`, 'tank-valve charging-tank 8', 'manifold low 8')
  ) {
    letIn(hands, isEnough, null);
    give('tank-valve charging-tank 0', 'manifold low 0');
  }
  give('decide stop-charging');
}

function letIn(hands: TidyHands, isEnough: (hands: TidyHands) => boolean, can: string | null): void {
  for (let second = 0; second < CAN_S && !hands.isLate() && !isEnough(hands); second += PACE_S) {
    if (can !== null) hands.give(`shake ${can}`);
    hands.wait(PACE_S);
  }
}
