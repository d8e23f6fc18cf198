/** What single lessons have to show, beyond being solved and failed. */
import { describe, expect, it } from 'vitest';
import type { PlanLine, RepeatedLines } from '../../shared/schema/plan';
import type { Wait } from '../../shared/schema/waits';
import { valueAt } from '../../src/session/record/record';
import { scenarioById } from '../../src/session/scenario/library';
import { type Played, played } from '../support/plans';

const plays = new Map<string, Played>();
function play(id: string, plan: 'solution'): Played {
  const scenario = scenarioById(id);
  const found = plays.get(id) ?? played(scenario, scenario.data.plans[plan]);
  plays.set(id, found);
  return found;
}

describe('the lessons', () => {
  it('lands the first car on its label by the scale', () => {
    const { record } = play('weighed-in', 'solution');
    expect(record.measures['charge.errorKg']).toBeLessThan(0.02);
    expect(record.measures['slugged.kg']).toBe(0);
  });

  it('shows the second car a high side that only air can lower', () => {
    const { record } = play('warm-at-the-lights', 'solution');
    const replaced = record.events.find((event) => event.id === 'replaced');
    const atNote = record.events.filter((event) => event.id === 'noted' && event.subject === 'high-gauge');
    const pressures = atNote.map(({ row }) => valueAt(record, row, 'highSide.gaugePressurePa'));
    expect(replaced).toBeDefined();
    expect(pressures[1]).toBeGreaterThan(1_900_000);
    expect(pressures[2]).toBeLessThan(1_720_000);
    expect(record.measures['charge.errorKg']).toBeLessThan(0.01);
  });

  it('tells another sentence when the charge is twenty grams another', () => {
    const scenario = scenarioById('weighed-in');
    const shorter = scenario.data.plans.solution.map((line): PlanLine => {
      if (typeof line === 'string' || !('repeat' in line)) return line;
      const { repeat, times } = line as RepeatedLines;
      return repeat.includes('shake can-2') ? { repeat, times: times - 5 } : line;
    });
    const told = ({ score, sentences }: Played): string => {
      return sentences[score.findings.findIndex(({ rule }) => rule === 'chargeWeighed')];
    };
    const grams = (played: Played): number =>
      1000 * valueAt(played.record, played.record.steps.length - 1, 'loop.massKg');
    const [full, less] = [play('weighed-in', 'solution'), played(scenario, shorter)];
    expect(grams(full) - grams(less)).toBeGreaterThan(15);
    expect(grams(full) - grams(less)).toBeLessThan(30);
    expect(told(full)).not.toBe(told(less));
    expect(told(less)).toContain(`${Math.round(grams(less))} g`);
  });

  it('ticks the first can when it is nearly empty, and the compressor as soon as it turns on it', () => {
    const scenario = scenarioById('drill-can-on-high');
    const minutes = (filling: number, running: number): PlanLine[] =>
      scenario.data.plans.solution.map((line): PlanLine => {
        if (typeof line === 'string' || !('run-on' in line)) return line;
        const { 'run-on': wait, times } = line as { 'run-on': Wait; times?: number };
        return wait === '1 min' ? { 'run-on': wait, times: times === 2 ? filling : running } : line;
      });
    const done = (plan: readonly PlanLine[]): string[] =>
      played(scenario, plan)
        .core.view()
        .deliveries.flatMap((one) => (one.done ? [one.id] : []));
    expect(done(scenario.data.plans.solution)).toEqual(['decided', 'started', 'stopped', 'told']);
    expect(done(minutes(2, 3))).not.toContain('stopped');
    // Just over the cut-in, and stopped at once: it has turned, the can is far from empty.
    expect(done(minutes(1, 1))).toEqual(['decided', 'started', 'told']);
  });
});
