/** Spoilt files: each is read or refused with its places, and none breaks what reads it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shapeProblems } from '../../shared/schema/problems';
import { parseYaml } from '../../shared/schema/readYaml';
import { scenarioSchema } from '../../shared/schema/scenario';
import { readScenario } from '../../src/scoring/readScenario';
import { rubrics } from '../../src/session/scenario/rubrics';
import { mutated } from './mutated';

const FILES = [
  'scenarios/templates/look-alike.yaml',
  'scenarios/templates/procedure-only.yaml',
  'scenarios/leaves.yaml',
];
/** Without most lines of their plans, which are all of a kind. */
const texts = FILES.map((file) =>
  readFileSync(file, 'utf8').replace(/(\n {4}- \S.*)(?:\n {4}(?:- |# ).*){6,}/g, '$1'),
);
const SEED = 20;
/** Of one file, the processor's own time. */
const MOST_US = 1_000_000;
/** Of these one goes on to what is looked up for its car. */
const WHOLLY = 40;

export function holdSpoilt(count: number): void {
  describe('spoilt files', () => {
    it(`are read or refused, ${count} of them`, { timeout: 1_800_000 }, () => {
      let good = 0;
      for (let number = 0; number < count; number++) {
        const text = mutated(texts[number % texts.length], SEED, number);
        const began = process.cpuUsage();
        const { source, errors } = parseYaml('m.yaml', text);
        const problems = source === null ? [] : shapeProblems(source, scenarioSchema);
        const places = [...errors.map(({ place }) => place), ...problems.map(({ at }) => at)];
        if (places.some((place) => !/^m\.yaml:\d+:\d+$/.test(place)))
          expect.fail(`file ${number}: ${places}`);
        if (source === null && errors.length === 0) expect.fail(`file ${number} is neither read nor refused`);
        const { user, system } = process.cpuUsage(began);
        if (user + system > MOST_US) expect.fail(`file ${number} took too long`);
        if (number % WHOLLY === 0) readScenario('m.yaml', text, rubrics);
        if (places.length === 0) good += 1;
      }
      // most are spoilt, and some slips say nothing: a letter in a text, a key that may be left out
      expect(good / count).toBeGreaterThan(0.02);
      expect(good / count).toBeLessThan(0.6);
    });
  });
}
