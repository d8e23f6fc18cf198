/** Ghosts that live along with a session: what they show is what such a car shows, and who is far off is left behind. */
import { beforeAll, describe, expect, test } from 'vitest';
import { forecastOf } from '../../src/prover/forecast/forecastOf';
import { ghostOptions } from '../../src/prover/forecast/ghostOptions';
import { type CloserLook, closerLookAt } from '../../src/prover/know/closerLook';
import { type Company, companyIn, type SoFar } from '../../src/prover/know/company';
import { fitOf, WORST_READING } from '../../src/prover/know/fitOf';
import { handsOf } from '../../src/prover/know/hands';
import { searchSeverities } from '../../src/prover/know/searchSeverities';
import { seatFor } from '../../src/prover/know/seat';
import { testsOf } from '../../src/prover/know/testsOf';
import { scenarioById } from '../../src/session/scenario/library';
import type { GhostSpec } from '../../src/suspects/causes';

const SEED = 1;
const SOUND: GhostSpec = { cause: 'nothing-wrong', severity: 0 };
const LEAVES = 'condenser-air-blocked';
const READ = ['low-gauge.running', 'high-gauge.running', 'line@discharge.running'];
const scenario = scenarioById('leaves');
const { data } = scenario;
const hidden = data.faults[0];
const forecast = forecastOf(ghostOptions(data, SEED));

let soFar: SoFar;
const newCompany = (): Company => {
  const company = companyIn(data, SEED, forecast);
  company.liveTo(soFar);
  company.add(SOUND);
  return company;
};
const shown = (company: Company, cause: string): readonly number[] => company.best(cause).shows;

beforeAll(() => {
  const seat = seatFor(scenario, SEED);
  const hands = handsOf(seat, forecast.probes, data.bench);
  const [rest, running] = forecast.stages;
  seat.prepare();
  hands.enter(rest);
  seat.couple();
  hands.enter(running);
  const tests = testsOf(forecast.probes, data.bench).filter(({ id }) => READ.includes(id));
  const seen = tests.flatMap((one) => hands.take(one));
  const { core } = seat.sitting;
  soFar = { log: core.log().commands, step: core.step, seen };
});

test('the readings of the session are those asked for', () => {
  expect(hidden.fault).toBe(LEAVES);
  expect(soFar.seen.map(({ probe }) => probe.id).sort()).toEqual([...READ].sort());
});

test('a ghost with what is hidden shows what was seen, within the error of the instruments', () => {
  const company = newCompany();
  company.add({ cause: LEAVES, severity: hidden.severity });
  soFar.seen.forEach(({ probe, value }, at) => {
    const most = probe.unit === 'Pa' ? 0.02 * (value + 101_325) : 1;
    expect(Math.abs(shown(company, LEAVES)[at] - value), probe.id).toBeLessThan(most);
  });
  expect(company.best(LEAVES).fit).toBeGreaterThan(-0.5 * soFar.seen.length);
  expect(company.best('nothing-wrong').fit).toBeLessThan(-WORST_READING);
});

test('who is far off is lived no further; the sound car is, and so is who fits', () => {
  const company = newCompany();
  for (const severity of [hidden.severity, 0.1]) company.add({ cause: LEAVES, severity });
  const before = company.steps();
  const later: SoFar = { ...soFar, step: soFar.step + 500 };
  company.liveTo(later);
  expect(company.of(LEAVES).map(({ fit }) => Number.isFinite(fit))).toEqual([true, false]);
  expect(Number.isFinite(company.best('nothing-wrong').fit)).toBe(true);
  expect(company.steps() - before).toBe(2 * 500);
});

test('a severity that nobody had in mind is found', () => {
  const company = newCompany();
  company.add({ cause: LEAVES, severity: 0.2 });
  searchSeverities(company, [LEAVES], soFar.seen);
  const { spec, fit } = company.best(LEAVES);
  expect(Math.abs(spec.severity - hidden.severity)).toBeLessThan(0.1);
  expect(fit).toBeGreaterThan(-soFar.seen.length);
});

describe('a closer look', () => {
  const lookAt = (...specs: readonly GhostSpec[]): CloserLook =>
    closerLookAt(data, SEED, { specs: [SOUND, ...specs], believed: specs.length + 1 }, forecast);
  const share = (look: CloserLook, cause: string): number | undefined =>
    look.look(soFar).find(({ spec }) => spec.cause === cause)?.share;

  test('believes the cause that fits, whatever severity the forecast had put it at', () => {
    const look = lookAt({ cause: LEAVES, severity: 0.3 }, { cause: 'low-charge', severity: 0.4 });
    expect(share(look, LEAVES)).toBeGreaterThan(0.99);
    expect(look.bestOf(LEAVES)?.cause).toBe(LEAVES);
    expect(look.bestOf('overcharge')).toBeNull();
  });

  test('at last calls two faults by the one whose signs they show', () => {
    const severity = hidden.severity;
    const both = [
      { cause: LEAVES, severity },
      { cause: 'too-little-oil', severity: 0.05 },
    ];
    const pair = `${LEAVES}+too-little-oil`;
    const look = lookAt({ cause: LEAVES, severity }, { cause: pair, severity, both });
    expect(share(look, pair)).toBeGreaterThan(0.3);
    const causes = look.atLast(soFar.seen).map(({ spec }) => spec.cause);
    expect(causes).toEqual(['nothing-wrong', LEAVES, LEAVES]);
  });
});

test('no one reading is the end of a car, and the further off still counts as the worse', () => {
  const at = soFar.seen.findIndex(({ probe }) => probe.unit === 'Pa');
  const one = [soFar.seen[at]];
  const fits = [1, 1.1, 1.5, 100].map((times) => fitOf(one, [times * one[0].value], 101_325));
  expect(fits[0]).toBeCloseTo(0, 9);
  expect(fits[1]).toBeLessThan(fits[0]);
  expect(fits[2]).toBeLessThan(fits[1]);
  expect(fits[3]).toBe(-WORST_READING);
});
