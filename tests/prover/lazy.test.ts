/** Lazy players: tidy, blind or nearly so, failed by what they do not know; and winners where a text gives the answer away. */
import { describe, expect, it } from 'vitest';
import type { ScenarioData } from '../../shared/schema/scenario';
import { BLIND_PLAYERS, LAZY_PLAYERS, type LazyId, playLazily } from '../../src/prover/lazy/playLazily';
import { scenarioById } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';
import { type Scenario, scenarioOf } from '../../src/session/scenario/scenario';
import { isWordId } from '../../src/words/words';

const PASS = 75;
/** Of a tidy player who knows nothing: the routine is worth this much at least. */
const TIDY = 55;

const changed = (scenario: Scenario, change: Partial<ScenarioData>): Scenario =>
  scenarioOf({ ...scenario.data, ...change }, rubrics);
const play = (scenario: Scenario, player: LazyId, seed = 1, others: readonly Scenario[] = []) =>
  playLazily(scenario, player, seed, others);

describe('the lazy players', () => {
  it('are told in a fixed order, those that look at nothing first, and each by a name', () => {
    expect(LAZY_PLAYERS.slice(0, BLIND_PLAYERS.length)).toEqual(BLIND_PLAYERS);
    expect(BLIND_PLAYERS).toEqual(['nothing', 'charge-anyway', 'swap-parts-at-random', 'visible-text']);
    const said = LAZY_PLAYERS.flatMap((player) => [
      `lazyPlayers.${player}.name`,
      `lazyPlayers.${player}.does`,
    ]);
    expect(said.filter((id) => !isWordId(id))).toEqual([]);
  });

  it('do the same again with the same seed', () => {
    const clicks = scenarioById('nothing-clicks');
    expect(play(clicks, 'nothing')).toEqual(play(clicks, 'nothing'));
  });
});

describe('who looks at nothing', () => {
  const clicks = scenarioById('nothing-clicks');

  it.each(BLIND_PLAYERS)('fails a car with a fault as %s, but not for want of tidiness', (player) => {
    const { score, reported, passed, critical } = play(clicks, player);
    expect(passed).toBe(false);
    expect(critical).toEqual([]);
    expect(reported).toBeLessThan(PASS);
    expect(score).toBeGreaterThan(TIDY);
  });

  it('fails a car with nothing wrong as well, though that is what they say', () => {
    const { score, reported, passed } = play(scenarioById('drill-hose-in-the-belt'), 'nothing');
    expect(score).toBeGreaterThan(PASS);
    expect({ reported, passed }).toEqual({ reported: 74, passed: false });
  });

  it('would pass it without the rule that something is read first', () => {
    const sound = scenarioById('drill-hose-in-the-belt');
    const { rubric } = sound.data;
    const lax = changed(sound, { rubric: { ...rubric, drop: [...(rubric.drop ?? []), 'readFirst'] } });
    expect(play(lax, 'nothing').passed).toBe(true);
  });
});

describe('the reader of the text', () => {
  const switched = scenarioById('click-click');

  it('does not find what is wrong in what this lesson says', () => {
    expect(play(switched, 'visible-text').passed).toBe(false);
  });

  it('passes where a paper gives it away', () => {
    const [bill] = switched.data.papers;
    const lines = [...bill.lines, 'Low-pressure switch replaced: the old one was set too high.'];
    const easy = changed(switched, { papers: [{ ...bill, lines }] });
    expect(play(easy, 'visible-text')).toMatchObject({ passed: true, critical: [] });
  });
});

describe('who looks at one thing', () => {
  it('has the needle in its window and the cause wrong', () => {
    const { score, passed } = play(scenarioById('nothing-clicks'), 'chase-the-window');
    expect(score).toBeGreaterThan(TIDY);
    expect(passed).toBe(false);
  });

  it('always names the fan, and keeps its hands out of it', () => {
    const { passed, critical } = play(scenarioById('nothing-clicks'), 'always-the-fan');
    expect({ passed, critical }).toEqual({ passed: false, critical: [] });
  });

  it("is not helped by another lesson's solution of the same car", () => {
    const others = [scenarioById('kerb-strike')];
    const { score, passed } = play(scenarioById('click-click'), 'another-scenarios-solution', 1, others);
    expect(score).toBeGreaterThan(TIDY);
    expect(passed).toBe(false);
  });
});
