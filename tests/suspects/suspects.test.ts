import { describe, expect, test } from 'vitest';
import type { PlanLine } from '../../shared/schema/plan';
import { faultsFor } from '../../src/faults/registry';
import { vehicleIds, vehicleOf } from '../../src/loop/car/vehicles';
import { NOTHING_WRONG } from '../../src/plant/faultBook';
import type { RefrigerantId } from '../../src/refrigerant/refrigerant';
import { plantOptions } from '../../src/session/scenario/plantOptions';
import { causesOf, ensembleAt, ensembleFor } from '../../src/suspects/causes';
import { expected } from '../../src/suspects/expectation';
import { buildGhost, type Ghost } from '../../src/suspects/ghost';
import { variance } from '../../src/suspects/likelihood';
import { observationsOf } from '../../src/suspects/observation';
import { type Suspects, suspectsAt, suspectsOf } from '../../src/suspects/suspects';
import { atRest, atTheLights, everyReading, type Lived, live, runAndRead, withFault } from './sessions';

const last = ({ after, prior }: Suspects) => after.at(-1)?.posterior ?? prior;

/** Enough to tell, and quick: these, and those that look like a fan that stands. */
const FEW = [
  NOTHING_WRONG,
  'low-charge',
  'air-in-loop',
  'restricted-orifice',
  'weak-compressor',
  'condenser-fan-dead',
  'condenser-fan-slow',
  'condenser-fan-late',
  'condenser-air-blocked',
];
const few = (severities?: readonly number[]) =>
  ensembleFor('sedan', severities).filter(({ cause }) => FEW.includes(cause));
const WORST = few([1]).filter(({ cause }) => !cause.startsWith('condenser-fan-'));

/** The car at the lights with another gas on the bench. */
const withBench = (refrigerant: RefrigerantId) => {
  const options = plantOptions(atTheLights.data, 1);
  return { ...options, faults: [], bench: { ...options.bench, refrigerant } };
};

describe('the fan that does not turn', () => {
  const { record, options } = live(atTheLights, atTheLights.data.plans.solution);
  const suspects = suspectsOf(record, options, few());

  test('is named by the readings and looks of the solution', () => {
    expect(last(suspects)['condenser-fan-dead']).toBeGreaterThan(0.8);
  });

  test('is not proven before the engine has run with the gauges on', () => {
    const named = record.events.find(({ id }) => id === 'diagnosed');
    const looked = record.events.find(({ id }) => id === 'looked');
    expect(suspectsAt(suspects, (looked?.step ?? 0) - 1)['condenser-fan-dead']).toBeCloseTo(
      (1 - 0.1) / (suspects.causes.length - 1),
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
  test.each(vehicleIds)(
    'of the %s holds the sound car and each fault that readings tell, about 50 cars',
    (id) => {
      const ensemble = ensembleFor(id);
      const told = faultsFor(vehicleOf(id)).filter(({ toldBy }) => toldBy !== 'search');
      expect(causesOf(ensemble)).toEqual([NOTHING_WRONG, ...told.map((fault) => fault.id)]);
      expect(ensemble.length).toBeGreaterThanOrEqual(45);
      expect(ensemble.length).toBeLessThanOrEqual(60);
      for (const { id: cause } of told) {
        const severities = ensemble.filter((spec) => spec.cause === cause).map(({ severity }) => severity);
        expect(severities.length).toBeGreaterThan(0);
        expect(severities.every((severity) => severity > 0 && severity <= 1)).toBe(true);
      }
    },
  );

  test.each([
    ['pickup', 'R-12', 'R-134a'],
    ['pickup', 'R-134a', 'R-12'],
    ['hatchback', 'R-134a', 'R-1234yf'],
  ] as const)(
    'of a %s with %s, met with a bench of %s, has no car of a third gas',
    (vehicleId, refrigerant, other) => {
      const options = { ...withBench(other), vehicleId, refrigerant };
      const ensemble = ensembleAt(options);
      const all = ensembleFor(vehicleId);
      expect(all.length - ensemble.length).toBe(
        all.filter(({ cause }) => /^(wrong|mixed)-refrigerant$/.test(cause)).length,
      );
      for (const spec of ensemble) expect(() => buildGhost(options, spec)).not.toThrow();
      expect(ensembleAt({ ...options, bench: { ...options.bench, refrigerant } })).toEqual(all);
    },
  );

  test('of a car found converted is filled as its conversion says', () => {
    const options = { ...withBench('R-134a'), vehicleId: 'pickup', refrigerant: 'R-134a' as const };
    const { plant } = buildGhost(options, { cause: NOTHING_WRONG, severity: 0 });
    expect(plant.value(plant.signalIndex('loop.massKg'))).toBeCloseTo(
      vehicleOf('pickup').conversion?.charge ?? 0,
      6,
    );
  });

  test('cannot tell a fault without effect from a sound car', () => {
    const { record, options } = live(withFault(null), runAndRead(...everyReading));
    const mild = ensembleFor('sedan', [0]).slice(0, 5);
    const suspects = suspectsOf(record, options, mild);
    for (const [cause, p] of Object.entries(last(suspects))) expect(p).toBeCloseTo(suspects.prior[cause], 12);
  });
});

describe('a sound car', () => {
  const sound = live(withFault(null), runAndRead(...everyReading));

  test('leaves nothing clearly above nothing wrong after a full set of readings, whatever the cause', () => {
    const suspects = suspectsOf(sound.record, sound.options, ensembleFor('sedan', [0.9]));
    const posterior = Object.fromEntries(
      Object.entries(last(suspects)).map(([cause, p]) => [cause, p / suspects.prior[cause]]),
    );
    // what shows nothing in such weather (too little oil, a clutch stuck on) stands level with it
    expect(Math.max(...Object.values(posterior))).toBeLessThan(1.05 * posterior[NOTHING_WRONG]);
    for (const plain of ['low-charge', 'condenser-fan-dead', 'weak-compressor', 'clutch-not-engaging'])
      expect(posterior[plain], plain).toBeLessThan(0.01 * posterior[NOTHING_WRONG]);
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

  test('a reading counts again once the loop has been undone', () => {
    const counts = (...between: readonly PlanLine[]) => {
      const note = 'note-reading low-gauge';
      const { record } = live(withFault(null), [...atRest, note, ...between, note]);
      return observationsOf(record)
        .filter(({ channel }) => channel === 'low-gauge')
        .map((seen) => seen.counts);
    };
    expect(counts()).toEqual([true, false]);
    expect(counts('open-loop suction')).toEqual([true, true]);
    expect(counts('ask opened', 'note-gas R-134a', 'hand-over charge-not-proven')).toEqual([true, false]);
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
