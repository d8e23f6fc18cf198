/** Templates in another language: the same scenario to the last figure, with sentences and notes that are all of that language. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ownWords } from '../../shared/schema/ownWords';
import { checkTranslation } from '../../src/scoring/checkTranslation';
import { readScenario } from '../../src/scoring/readScenario';
import { checkTeaching } from '../../src/session/check/checkTeaching';
import { rubrics } from '../../src/session/scenario/rubrics';
import { TEMPLATE_IDS, templateText } from '../../src/session/scenario/templates';
import { templatesForLinks } from '../../src/workshop/keep/starts';

const notesIn = (text: string): string[] => text.split('\n').filter((line) => /^\s*#/.test(line));

describe.each(TEMPLATE_IDS)('the template %s in Spanish', (id) => {
  const path = `scenarios/templates/es/${id}.yaml`;
  const words = readFileSync(path, 'utf8');

  it('has words and notes for all of it', async () => {
    const template = await templateText(id);
    expect(checkTranslation(path, words, template)).toEqual([]);
    expect(notesIn(words)).toHaveLength(notesIn(template).length);
    expect(words).toMatch(/\nhistory: .*\nteacher: /s);
  });

  it('is the same scenario, and nothing is wrong with it', async () => {
    const [template, told] = await Promise.all([templateText(id), templatesForLinks.text(`${id}-es`)]);
    const read = readScenario('told.yaml', told, rubrics);
    if (!read.formed || !read.ready) throw new Error(JSON.stringify(read.problems));
    checkTeaching(read.formed.data, read.formed.findings);
    expect(read.formed.findings.list).toEqual([]);
    const { data } = read.formed;
    const own = readScenario('own.yaml', template, rubrics).formed?.data;
    if (!own) throw new Error('no template');
    const silent = (one: typeof own) => {
      const { title, complaint, owner, hints, debrief, teacher, author, language, ...rest } = one;
      const { history, ...contents } = rest.contents;
      const papers = rest.papers.map((paper) => paper.id);
      const deliver = rest.deliver.map(({ text, ...delivery }) => delivery);
      return { ...rest, contents, papers, deliver };
    };
    expect(silent(data)).toEqual(silent(own));
    expect([data.language, data.author]).toEqual(['es', 'Su nombre']);
    const sentences = JSON.stringify(Object.values(ownWords(data)));
    for (const english of JSON.stringify(Object.values(ownWords(own))).match(/[^"]{12,}/g) ?? [])
      expect(sentences).not.toContain(english);
    expect(notesIn(told).map((note) => note.trim())).toEqual(notesIn(words));
    expect(told.split('\n').every((line) => line.length < 250)).toBe(true);
  });
});
