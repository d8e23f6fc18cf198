/** Templates are good as they stand: nothing to find, the solution solves, haste and idleness do not. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import draft from '../../src/cli/verbs/draft';
import { checkScenario } from '../../src/scoring/checkScenario';
import { scenarios } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';
import { TEMPLATE_IDS, templateText } from '../../src/session/scenario/templates';
import { callVerb } from '../support/callVerb';

describe.each(TEMPLATE_IDS)('the template %s', (id) => {
  const file = `scenarios/templates/${id}.yaml`;

  it('has nothing wrong with it, its three plans played', async () => {
    const text = await templateText(id);
    expect(text).toBe(readFileSync(file, 'utf8'));
    expect(checkScenario(file, text, rubrics)).toEqual([]);
  });

  it('tells whoever changes it what is what', async () => {
    const text = await templateText(id);
    expect(text).toContain(`id: ${id}\n`);
    expect(text.split('\n').filter((line) => /^\s*#/.test(line)).length).toBeGreaterThanOrEqual(6);
  });

  it('is not on the shelf, and no other wording of what is', async () => {
    const text = await templateText(id);
    const shelf = scenarios.map(({ data }) => data);
    expect(shelf.map((data) => data.id)).not.toContain(id);
    expect(
      shelf.filter(({ complaint, title }) => text.includes(complaint) || text.includes(`title: ${title}\n`)),
    ).toEqual([]);
  });
});

describe('draft', () => {
  it('prints a template as it is written, and names the nearest for a slip', async () => {
    const good = await callVerb([draft], ['draft', 'look-alike']);
    expect(good).toMatchObject({ code: 0, out: await templateText('look-alike') });
    const slipped = await callVerb([draft], ['draft', 'look-alkie']);
    expect(slipped.code).toBe(2);
    expect(slipped.notes).toContain('look-alike');
  });
});
