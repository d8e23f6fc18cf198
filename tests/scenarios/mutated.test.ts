/** Spoilt files: each is read or refused with its places, and none breaks what reads it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shapeProblems } from '../../shared/schema/problems';
import { parseYaml } from '../../shared/schema/readYaml';
import { scenarioSchema } from '../../shared/schema/scenario';
import { isLongRun } from '../support/isLongRun';
import { mutated } from '../support/mutated';

const FILES = [
  'scenarios/templates/look-alike.yaml',
  'scenarios/templates/procedure-only.yaml',
  'scenarios/leaves.yaml',
];
const texts = FILES.map((file) => readFileSync(file, 'utf8'));
const SEED = 20;
const COUNT = isLongRun ? 100_000 : 2_000;
/** Of one file, by far more than any takes: a busy machine is no finding. */
const MOST_MS = 3_000;

describe('spoilt files', () => {
  it(`are read or refused, ${COUNT} of them`, { timeout: 1_800_000 }, () => {
    let good = 0;
    for (let number = 0; number < COUNT; number++) {
      const text = mutated(texts[number % texts.length], SEED, number);
      const began = performance.now();
      const { source, errors } = parseYaml('m.yaml', text);
      const problems = source === null ? [] : shapeProblems(source, scenarioSchema);
      const places = [...errors.map(({ place }) => place), ...problems.map(({ at }) => at)];
      if (places.some((place) => !/^m\.yaml:\d+:\d+$/.test(place))) expect.fail(`file ${number}: ${places}`);
      if (source === null && errors.length === 0) expect.fail(`file ${number} is neither read nor refused`);
      if (performance.now() - began > MOST_MS) expect.fail(`file ${number} took too long`);
      if (places.length === 0) good += 1;
    }
    // most are spoilt, and some slips say nothing: a letter in a text, a key that may be left out
    expect(good / COUNT).toBeGreaterThan(0.02);
    expect(good / COUNT).toBeLessThan(0.6);
  });
});
