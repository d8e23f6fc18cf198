/** Work that looks like the job and is not: each of these plays the solution with one thing done badly. */
import { describe, expect, it } from 'vitest';
import type { PlanLine, RepeatedLines } from '../../shared/schema/plan';
import { scenarioById } from '../../src/session/scenario/library';
import { type Played, played } from '../support/plans';

type Edit = (lines: readonly PlanLine[]) => PlanLine[];

const without =
  (...gone: string[]): Edit =>
  (lines) =>
    lines.filter((line) => typeof line !== 'string' || !gone.some((start) => line.startsWith(start)));
const instead =
  (line: string, ...others: PlanLine[]): Edit =>
  (lines) => {
    expect(lines).toContain(line);
    return lines.flatMap((one) => (one === line ? others : [one]));
  };
/** Other repeats of what is done to a can while it feeds. */
const feeding =
  (can: string, times: number): Edit =>
  (lines) =>
    lines.map((line): PlanLine => {
      if (typeof line === 'string' || !('repeat' in line)) return line;
      const { repeat } = line as RepeatedLines;
      return repeat.includes(`shake ${can}`) ? { repeat, times } : line;
    });

function play(id: string, ...edits: readonly Edit[]): Played {
  const scenario = scenarioById(id);
  return played(
    scenario,
    edits.reduce<readonly PlanLine[]>((lines, edit) => edit(lines), scenario.data.plans.solution),
  );
}
const severityOf = ({ score }: Played, rule: string) =>
  score.findings.find((finding) => finding.rule === rule)?.severity;

describe('the car that is warm at the lights', () => {
  const id = 'warm-at-the-lights';

  it('is not solved by deciding everything and naming every cause, the right ones last', () => {
    const all = play(
      id,
      instead('decide do-not-charge', 'decide charge', 'decide refer', 'decide do-not-charge'),
      instead(
        'diagnose condenser-fan-dead sure',
        ...['low-charge', 'overcharge', 'weak-compressor', 'condenser-fan-dead'].map(
          (cause) => `diagnose ${cause} sure`,
        ),
      ),
    );
    expect(all.score.passed).toBe(false);
    for (const rule of ['neverCharge', 'oneMind', 'causesFew']) expect(severityOf(all, rule)).toBe('serious');
  });

  it('holds the last decision for the one that counts', () => {
    const torn = play(id, instead('decide do-not-charge', 'decide do-not-charge', 'decide refer'));
    expect(severityOf(torn, 'saidNo')).toBe('serious');
    expect(torn.score.score).toBeLessThan(90);
  });

  it('lets one wrong cause cost points, and two the half of the finding', () => {
    const named = (...causes: string[]) =>
      play(
        id,
        instead('diagnose condenser-fan-dead sure', ...causes.map((cause) => `diagnose ${cause} sure`)),
      );
    const [none, one, two] = [
      named('condenser-fan-dead'),
      named('overcharge', 'condenser-fan-dead'),
      named('overcharge', 'low-charge', 'condenser-fan-dead'),
    ];
    expect(severityOf(one, 'causesFew')).toBe('minor');
    expect(one.score.score).toBeLessThan(none.score.score);
    expect(two.score.domains.finding.capped).toBe(true);
  });

  it('is failed by a guess: the fan not looked at, nothing noted', () => {
    const guess = play(id, without('look fan', 'note-reading'));
    for (const rule of ['fanSeen', 'decidedOnReadings', 'namedOnReadings'])
      expect(severityOf(guess, rule)).toBe('serious');
    expect(guess.score.score).toBeLessThan(75);
    expect(guess.score.passed).toBe(false);
  });

  it('is not proved with the blower off, nor with the compressor standing', () => {
    const still = play(id, instead('probe-air centre-vent', 'blower 0', 'probe-air centre-vent'));
    const off = play(id, instead('probe-air centre-vent', 'ac off', 'probe-air centre-vent'));
    for (const proof of [still, off]) expect(severityOf(proof, 'provedAtIdle')).toBe('serious');
    expect(severityOf(play(id), 'provedAtIdle')).toBeNull();
  });
});

describe('the car that came back empty', () => {
  const id = 'weighed-in';

  it('earns nothing for a stop that was said before the first gram', () => {
    const early = play(
      id,
      without('decide stop-charging'),
      instead('decide charge', 'decide charge', 'decide stop-charging'),
    );
    expect(severityOf(early, 'stopMeant')).toBe('serious');
    expect(severityOf(early, 'saidStop')).not.toBeNull();
    expect(early.score.domains.charging.capped).toBe(true);
  });

  it('loses the half of the charging when all of the second can goes in', () => {
    const over = play(id, feeding('can-2', 70));
    expect(over.record.measures['charge.errorKg']).toBeGreaterThan(0.05);
    expect(severityOf(over, 'chargeWeighed')).toBe('serious');
    expect(over.score.domains.charging.capped).toBe(true);
    expect(over.score.score).toBeLessThan(90);
  });

  it('loses it too when it is left as far short', () => {
    const short = play(id, feeding('can-2', 6));
    expect(short.record.measures['charge.errorKg']).toBeGreaterThan(0.035);
    expect(severityOf(short, 'chargeWeighed')).toBe('serious');
  });
});

describe.each(['weighed-in', 'warm-at-the-lights'])('%s', (id) => {
  it.each([3, 4, 5])('is solved by its solution with seed %i', (seed) => {
    const scenario = scenarioById(id);
    const { score } = played(scenario, scenario.data.plans.solution, 'assessed', seed);
    expect(score.findings.filter(({ severity }) => severity !== null).map(({ rule }) => rule)).toEqual([]);
    expect(score.score).toBeGreaterThanOrEqual(95);
  });
});
