import { describe, expect, test } from 'vitest';
import wordsOfProof from '../../shared/words/en/prove.yaml';
import wordsOfCar from '../../shared/words/en/workshopCar.yaml';
import { proofMarkup } from '../../src/export/proof/proofMarkup';
import { proofSheet } from '../../src/export/proof/proofSheet';
import { sheetText } from '../../src/export/proof/sheetText';
import { baysText, testName, testNameWithTime } from '../../src/export/proof/written';
import { findingCodes } from '../../src/prover/findingCodes';
import { stageSeconds } from '../../src/prover/forecast/stageSeconds';
import { stagesOf } from '../../src/prover/forecast/stages';
import { proofOf } from '../../src/prover/proofOf';
import { scenarioById } from '../../src/session/scenario/library';
import { setLanguage } from '../../src/words/words';
import { firstResults, outcome, table } from '../support/plantedProof';

const scenario = scenarioById('warm-at-the-lights');
const pair = {
  a: 'air-in-loop',
  b: 'condenser-fan-dead',
  decisionDiffers: true,
  best: { test: 'high-gauge.running', spreads: 0.3 },
  wouldTell: { test: 'gas-air.rest', tool: 'identifier', spreads: 5, shows: [0.06, 0.01] },
} as const;
const proof = proofOf(
  scenario,
  { seeds: 20, budgetSteps: 1 },
  firstResults({
    table: { ...table, pairs: [pair] },
    lazy: (player) => outcome(player, 1, player === 'always-the-fan' ? 80 : 20),
  }),
);

describe('the page of a proof', () => {
  const text = sheetText(proofSheet(proof));

  test('has its verdict first, then why', () => {
    const at = (part: string): number => text.indexOf(part);
    expect(at('It is refused.')).toBeGreaterThan(0);
    expect(at('PRV106')).toBeGreaterThan(at('It is refused.'));
    expect(at('PRV108')).toBeGreaterThan(at('PRV106'));
    expect(at('Who can solve it')).toBeGreaterThan(at('PRV108'));
  });

  test('shows readings as a person reads them, for the tests of this bench only', () => {
    expect(text).toMatch(/\* radiator fan not turning, 60\u00a0% +2,100\u00a0kPa/);
    expect(text).toContain('–');
    expect(text).toMatch(/\nnothing is wrong +1,400\u00a0kPa\n/);
    expect(text).toMatch(/6\u00a0%.* against 1\u00a0%/);
  });

  test('says over each column of readings for how long the car had run so', () => {
    expect(text).toContain('high-side gauge, running, windows open, after 01:30');
    expect(testNameWithTime('low-gauge.shut')).toBe('low-side gauge, windows shut, after 02:30');
    for (const id of ['low-gauge.rest', 'clutch.turning.motorway', 'unheard-of'])
      expect(testNameWithTime(id)).toBe(testName(id));
    for (const { id, seconds } of stagesOf('hatchback')) expect(seconds).toBe(stageSeconds[id]);
  });

  test('says of each step what share of the doubt it took away, and means by an error of reading what the workshop does', () => {
    expect(text).toMatch(/82\s% of all the doubt this way takes away \(1\.8 nats\)/);
    expect(text).toContain('0.3 errors of reading apart');
    expect(JSON.stringify(wordsOfCar)).toContain('{spreads} errors of reading apart');
  });

  test('says what was left out and why', () => {
    expect(text).toContain('played in 1 of 20 bays');
    expect(text).toContain('no clock');
  });

  test('says what helps, and shows readings in whatever units are asked for', () => {
    expect(text).toMatch(/PRV106 .* What helps: Put there what would tell/);
    const inPsi = sheetText(proofSheet(proof, ({ value }) => `${Math.round(value / 6894.757)} psi`));
    expect(inPsi).toMatch(/\nnothing is wrong +203\u00a0psi\n/);
  });

  test('writes many bays in a row as one span', () => {
    expect(baysText([3, 1, 4, 5, 9, 10])).toBe('1, 3–5, 9, 10');
    expect(baysText([])).toBe('');
  });

  test('is one file without script, and what an author wrote stays text', () => {
    const hostile = { ...proof, title: '<img src=x onerror=alert(1)> & "so"' };
    const page = proofMarkup([hostile]);
    expect(page).not.toContain('<img');
    expect(page).not.toMatch(/<script|<link|src=(?!x)|@import|url\(/);
    expect(page).toContain('&lt;img');
  });

  test('is told in Spanish too', async () => {
    await setLanguage('es');
    try {
      const spanish = sheetText(proofSheet(proof));
      expect(spanish).toContain('Se rechaza.');
      expect(proofMarkup([proof])).toContain('<html lang="es">');
      expect(spanish).not.toMatch(/bench|scores/);
    } finally {
      await setLanguage('en');
    }
  });
});

test('what reads as a sound car is told of one where nothing is wrong, and no reason to refuse it', () => {
  const sound = proofOf(
    scenarioById('same-needle-right'),
    { seeds: 1, budgetSteps: 1 },
    firstResults({
      table: { ...table, pairs: [{ ...pair, a: 'nothing-wrong', b: 'moisture', wouldTell: null }] },
      lazy: (player) => outcome(player, 1, 20),
    }),
  );
  const told = sound.findings.filter(({ path }) => path[0] === 'bench');
  expect(told).toMatchObject([{ code: 'PRV112', level: 'warning', values: { other: 'moisture' } }]);
  expect(sheetText(proofSheet(sound))).toMatch(/PRV112 Nothing is wrong here; .*water/);
});

test('says what a rule is about that the solution breaks', () => {
  const broken = proofOf(
    scenario,
    { seeds: 1, budgetSteps: 1 },
    firstResults({ solution: outcome('solution', 1, 74, { critical: ['canOnHigh', 'vented'] }) }),
  );
  expect(sheetText(proofSheet(broken))).toMatch(
    /PRV102 .* canOnHigh: The high side can push back.* vented: What goes into the air stays there/,
  );
});

test('every code of the prover has its sentence, and no sentence is of another', () => {
  const { finding, help } = wordsOfProof as Readonly<Record<string, Readonly<Record<string, string>>>>;
  const codes = Object.keys(findingCodes);
  expect(Object.keys(finding)).toEqual(codes);
  // that of the whole library stands on no scenario's page
  expect(Object.keys(help)).toEqual(codes.filter((code) => code !== 'PRV120'));
});
