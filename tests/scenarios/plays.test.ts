/** Every shipped scenario is played with its own plans. */
import { describe, expect, it } from 'vitest';
import type { PlanLine, RepeatedLines } from '../../shared/schema/plan';
import { eventIds } from '../../src/session/conditions/eventIds';
import { valueAt } from '../../src/session/record/record';
import { scenarioById, scenarios } from '../../src/session/scenario/library';
import { type Played, played } from '../support/plans';

const plays = new Map<string, Played>();
function play(id: string, plan: 'solution' | 'careless' | 'nothing', seed = 1): Played {
  const key = `${id} ${plan} ${seed}`;
  const scenario = scenarioById(id);
  const found = plays.get(key) ?? played(scenario, scenario.data.plans[plan], 'assessed', seed);
  plays.set(key, found);
  return found;
}
const ids = scenarios.map(({ data }) => data.id);
/** An hour's job is played in one bay only. */
const isLong = (id: string): boolean => scenarioById(id).data.minutes > 45;

describe.each(ids)('%s', (id) => {
  it('is solved by its solution, without a refused line or a critical fault', () => {
    const { score, refused, core } = play(id, 'solution');
    expect(refused).toEqual([]);
    expect(score.critical).toEqual([]);
    expect(score.score).toBeGreaterThanOrEqual(95);
    expect(score.passed).toBe(true);
    expect(core.view().phase).toBe('debrief');
    expect(core.view().deliveries.filter(({ done }) => !done)).toEqual([]);
  });

  it.skipIf(isLong(id))('is solved by it in another bay as well', () => {
    expect(play(id, 'solution', 2).score.score).toBeGreaterThanOrEqual(95);
    expect(play(id, 'solution', 2).core.stateHash()).not.toBe(play(id, 'solution').core.stateHash());
  });

  it('is failed by carelessness, with a critical fault', () => {
    const { score } = play(id, 'careless');
    expect(score.passed).toBe(false);
    expect(score.critical.length).toBeGreaterThan(0);
    expect(score.reported).toBeLessThan(75);
  });

  it('is failed by doing nothing, without one', () => {
    const { score } = play(id, 'nothing');
    expect(score.passed).toBe(false);
    expect(score.critical).toEqual([]);
    expect(score.score).toBeLessThan(20);
  });

  it('has a number for everything but instruments with nothing to read', () => {
    const { record } = play(id, 'solution');
    const width = record.signals.length;
    const holes = new Set<string>();
    record.values.forEach((value, at) => {
      if (Number.isNaN(value)) holes.add(record.signals[at % width].id);
    });
    const reading =
      /^(chargingGauge|lowGauge|highGauge|airThermometer|lineThermometer|scale|micronGauge|identifier|detector|soap|lamp|label\.writtenKg)/;
    expect([...holes].filter((signal) => !reading.test(signal))).toEqual([]);
  });

  it('brings about nothing that a condition could not name', () => {
    for (const plan of ['solution', 'careless'] as const) {
      const unknown = play(id, plan).record.events.filter((event) => !eventIds.includes(event.id));
      expect(unknown.map((event) => event.id)).toEqual([]);
    }
  });

  it('quotes time, step and a unit or a count in every sentence', () => {
    for (const sentence of play(id, 'careless').sentences) {
      expect(sentence).toMatch(/\d\d:\d\d \(step [\d,]+\)/);
      expect(sentence.replace(/\d\d:\d\d \(step [\d,]+\)/, '')).toMatch(/\d (kPa|g|°C|K|rpm)|: \d/);
    }
  });
});

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
});
