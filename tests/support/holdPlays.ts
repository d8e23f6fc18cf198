/**
 * A shipped scenario, played with its own plans. The library is told off over several test files, so that they run beside
 * each other; what was played is let go with its scenario.
 */
import { afterAll, describe, expect, it } from 'vitest';
import { eventIds } from '../../src/session/conditions/eventIds';
import { scenarioById, scenarios } from '../../src/session/scenario/library';
import { type Played, played } from './plans';

export type PlanName = 'solution' | 'careless' | 'nothing';

/** What instruments show is no number while there is nothing to read, and so is what nobody has written. */
const MAY_BE_EMPTY =
  /^(chargingGauge|lowGauge|highGauge|airThermometer|lineThermometer|scale|micronGauge|identifier|detector|soap|lamp|sealerTest|label\.writtenKg)/;

/** The `part`th of `parts` shares of the library. */
export function holdPlays(part: number, parts: number): void {
  const ids = scenarios.map(({ data }) => data.id).filter((_, at) => at % parts === part);
  for (const id of ids) describe(id, () => holdScenario(id));
}

/** An hour's job costs half a minute; long ones are solved in the long run, but for one conversion. */
const IN_SHORT: ReadonlySet<string> = new Set(['from-twelve']);
const LONG_MINUTES = 30;
export const isLong = (id: string): boolean =>
  scenarioById(id).data.minutes > LONG_MINUTES && !IN_SHORT.has(id);

function holdScenario(id: string): void {
  const plays = new Map<PlanName, Played>();
  function play(plan: PlanName): Played {
    const scenario = scenarioById(id);
    const found = plays.get(plan) ?? played(scenario, scenario.data.plans[plan], 'assessed', 1);
    plays.set(plan, found);
    return found;
  }
  afterAll(() => plays.clear());

  it.skipIf(isLong(id))('is solved by its solution, without a refused line or a critical fault', () => {
    holdSolved(play('solution'));
  });

  it('is failed by carelessness, with a critical or a serious fault', () => {
    const { score } = play('careless');
    const grave = score.findings.filter(({ severity }) => severity === 'critical' || severity === 'serious');
    expect(score.passed).toBe(false);
    expect(grave.length).toBeGreaterThan(0);
    expect(score.reported).toBeLessThan(75);
  });

  it('is failed by doing nothing, without a critical fault', () => {
    const { score } = play('nothing');
    expect(score.passed).toBe(false);
    expect(score.critical).toEqual([]);
    expect(score.score).toBeLessThan(25);
  });

  it('brings about nothing that a condition could not name', () => {
    for (const plan of isLong(id) ? (['careless'] as const) : (['solution', 'careless'] as const)) {
      const unknown = play(plan).record.events.filter((event) => !eventIds.includes(event.id));
      expect(unknown.map((event) => event.id)).toEqual([]);
    }
  });

  it('quotes the time and a unit or a count in every sentence', () => {
    for (const sentence of play('careless').sentences) {
      expect(sentence).toMatch(/\d\d:\d\d/);
      expect(sentence.replace(/\d\d:\d\d/, '')).toMatch(
        /\d (kPa|g|kg|mL|%|ppm|min|s|m³|°C|K|rpm|lines?|times?)|: [\d\w]/,
      );
    }
  });
}

/** What a solution has to be. */
export function holdSolved({ score, refused, core, record }: Played): void {
  expect(refused).toEqual([]);
  expect(score.critical).toEqual([]);
  expect(score.score).toBeGreaterThanOrEqual(95);
  expect(score.passed).toBe(true);
  expect(core.view().phase).toBe('debrief');
  expect(core.view().deliveries.filter(({ done }) => !done)).toEqual([]);
  const width = record.signals.length;
  const holes = new Set<string>();
  record.values.forEach((value, at) => {
    if (Number.isNaN(value)) holes.add(record.signals[at % width].id);
  });
  expect([...holes].filter((signal) => !MAY_BE_EMPTY.test(signal))).toEqual([]);
}
