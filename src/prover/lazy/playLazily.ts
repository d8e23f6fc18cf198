/**
 * Lazy players: what luck and one good habit are worth in a scenario. All of them are tidy - they know the safe routine, so
 * that nothing but knowledge stands between them and the mark - and look at nothing, or at one thing only. Scored as any
 * assessed session is; what ghost cars would say of the cause only where it is known without them.
 */
import { score } from '../../scoring/score';
import { openRecorded } from '../../session/openRecorded';
import type { Scenario } from '../../session/scenario/scenario';
import type { Outcome } from '../outcome';
import { alwaysTheFan } from './players/alwaysTheFan';
import { anotherSolution } from './players/anotherSolution';
import { chargeAnyway } from './players/chargeAnyway';
import { chaseTheWindow } from './players/chaseTheWindow';
import { nothing } from './players/nothing';
import { oneCanThenLook } from './players/oneCanThenLook';
import { swapParts } from './players/swapParts';
import { untilTheGlassClears } from './players/untilTheGlassClears';
import { untilTheVentIsCold } from './players/untilTheVentIsCold';
import { visibleText } from './players/visibleText';
import { type TidyHands, tidyHands } from './tidyHands';
import { unreadMeasures } from './unreadMeasures';

type Player = (hands: TidyHands, others: readonly Scenario[]) => void;

const BLIND = {
  nothing,
  'charge-anyway': chargeAnyway,
  'swap-parts-at-random': swapParts,
  'visible-text': visibleText,
} as const satisfies Readonly<Record<string, Player>>;

const LOOKING = {
  'chase-the-window': chaseTheWindow,
  'one-can-then-look': oneCanThenLook,
  'until-the-vent-is-cold': untilTheVentIsCold,
  'until-the-glass-clears': untilTheGlassClears,
  'always-the-fan': alwaysTheFan,
  'another-scenarios-solution': anotherSolution,
} as const satisfies Readonly<Record<string, Player>>;

export type LazyId = keyof typeof BLIND | keyof typeof LOOKING;

const PLAYERS: Readonly<Record<LazyId, Player>> = { ...BLIND, ...LOOKING };

/** Those that look at nothing. */
export const BLIND_PLAYERS = Object.keys(BLIND) as readonly LazyId[];
/** All, those that look at nothing first. */
export const LAZY_PLAYERS = Object.keys(PLAYERS) as readonly LazyId[];

/** `others`: the scenarios of which one's solution is played on this car. */
export function playLazily(
  scenario: Scenario,
  player: LazyId,
  seed: number,
  others: readonly Scenario[],
): Outcome {
  const { core, record } = openRecorded(scenario, 'assessed', seed);
  PLAYERS[player](tidyHands(core, scenario, seed), others);
  const result = score(unreadMeasures(record(), scenario), scenario);
  const { score: points, reported, passed, critical } = result;
  return { player, seed, score: points, reported, passed, critical, steps: core.step };
}
