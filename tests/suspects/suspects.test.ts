import { describe, expect, test } from 'vitest';
import { NOTHING_WRONG } from '../../src/plant/faultBook';
import { causesOf, ensembleFor } from '../../src/suspects/causes';
import { expected } from '../../src/suspects/expectation';
import { buildGhost, type Ghost } from '../../src/suspects/ghost';
import { variance } from '../../src/suspects/likelihood';
import { observationsOf } from '../../src/suspects/observation';
import { type Suspects, suspectsAt, suspectsOf } from '../../src/suspects/suspects';
import { atTheLights, everyReading, type Lived, live, runAndRead, withFault } from './sessions';

const last = ({ after, prior }: Suspects) => after.at(-1)?.posterior ?? prior;
const top = (suspects: Suspects): string | undefined =>
  Object.entries(last(suspects)).sort(([, a], [, b]) => b - a)[0]?.[0];
/** Enough to tell, and quick: the worst of each. */
const WORST = ensembleFor('sedan', [1]);

describe('the fan that does not turn', () => {
  const { record, options } = live(atTheLights, atTheLights.data.plans.solution);
  const suspects = suspectsOf(record, options);

  test('is named by the readings and looks of the solution', () => {
    expect(last(suspects)['condenser-fan-dead']).toBeGreaterThan(0.8);
  });

  test('is not proven before the engine has run with the gauges on', () => {
    const named = record.events.find(({ id }) => id === 'diagnosed');
    const looked = record.events.find(({ id }) => id === 'looked');
    expect(suspectsAt(suspects, (looked?.step ?? 0) - 1)['condenser-fan-dead']).toBeCloseTo(
      1 / suspects.causes.length,
      12,
    );
    expect(suspectsAt(suspects, looked?.step ?? 0)['condenser-fan-dead']).toBeLessThan(0.6);
    expect(suspectsAt(suspects, named?.step ?? 0)['condenser-fan-dead']).toBeGreaterThan(0.8);
  });

  test('its ghost has the new fan too', () => {
    const proof = suspects.after.findLast(({ seen }) => seen.channel === 'high-gauge');
    const { 'condenser-fan-dead': fan, [NOTHING_WRONG]: sound } = proof?.ghosts ?? {};
    expect(fan).not.toBeNull();
    expect(Math.abs((fan ?? 0) - (sound ?? 0))).toBeLessThan(0.03 * (sound ?? 0));
  });

  test('every posterior is a share of one', () => {
    for (const { posterior } of suspects.after)
      expect(Object.values(posterior).reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 12);
  });
});

describe('an ensemble', () => {
  test('holds the sound car and each fault of the registry that applies', () => {
    const ensemble = ensembleFor('sedan');
    expect(causesOf(ensemble)[0]).toBe(NOTHING_WRONG);
    expect(causesOf(ensemble)).toContain('condenser-fan-dead');
    for (const cause of causesOf(ensemble).slice(1))
      expect(ensemble.filter((spec) => spec.cause === cause)).toHaveLength(3);
  });

  test('cannot tell a fault without effect from a sound car', () => {
    const { record, options } = live(withFault(null), runAndRead(...everyReading));
    const mild = ensembleFor('sedan', [0]).slice(0, 5);
    const posterior = last(suspectsOf(record, options, mild));
    for (const p of Object.values(posterior)) expect(p).toBe(posterior[NOTHING_WRONG]);
  });
});

describe('a sound car', () => {
  const sound = live(withFault(null), runAndRead(...everyReading));

  test('leaves nothing wrong on top after a full set of readings', () => {
    expect(top(suspectsOf(sound.record, sound.options))).toBe(NOTHING_WRONG);
  });

  test('the order of readings on one set of conditions does not matter', () => {
    const other = live(withFault(null), runAndRead(...[...everyReading].reverse()));
    const [one, two] = [sound, other].map(({ record, options }) => last(suspectsOf(record, options, WORST)));
    for (const cause of causesOf(WORST)) expect(two[cause]).toBeCloseTo(one[cause], 12);
    expect(one[NOTHING_WRONG]).toBeGreaterThan(1 / causesOf(WORST).length);
  });

  test('reading a needle twice tells no more than once', () => {
    const twice = live(withFault(null), runAndRead(...everyReading, ...everyReading.slice(1)));
    const again = suspectsOf(twice.record, twice.options, WORST);
    expect(again.after.slice(-3).map(({ seen }) => seen.counts)).toEqual([false, false, false]);
    expect(last(again)).toEqual(last(suspectsOf(sound.record, sound.options, WORST)));
  });

  test('the same log gives the same bits', () => {
    const again = () => suspectsOf(sound.record, sound.options, WORST);
    expect(JSON.stringify(again())).toBe(JSON.stringify(again()));
  });
});

describe('the ghost of the true fault', () => {
  test.each([
    ['weak-compressor', 0.7],
    ['low-charge', 0.6],
    ['condenser-fan-dead', 1],
  ])('%s at %d reads what the instruments read, within their spread', (cause, severity) => {
    const lived = live(withFault(cause, severity), runAndRead(...everyReading), 7);
    const ghost = buildGhost(lived.options, { cause, severity });
    const misses = compare(lived, ghost);
    expect(misses).toHaveLength(6);
    for (const off of misses) expect(off).toBeLessThan(2);
  });
});

/** Distance of each observation from what the ghost shows, in standard deviations; a look is right or far off. */
function compare({ record }: Lived, ghost: Ghost): number[] {
  const observations = observationsOf(record);
  const misses: number[] = [];
  for (const { number, step, command } of record.actions) {
    ghost.runTo(step);
    ghost.perform(command);
    const seen = observations.find(({ action }) => action === number);
    if (!seen) continue;
    const shows = expected(ghost, seen);
    const spread = seen.kind === 'look' ? 0.1 : Math.sqrt(variance(ghost, seen, shows));
    misses.push(Math.abs(seen.value - shows) / spread);
  }
  return misses;
}
