import { expect, test } from 'vitest';
import { validate } from '../../shared/build/validate';
import { readYaml } from '../../shared/schema/readYaml';

test('a file of words is checked when it is built', () => {
  const source = readYaml('shared/words/en/cli.yaml', 'a: 1\n');
  expect(() => validate('shared/words/en/cli.yaml', source)).toThrow('shared/words/en/cli.yaml:1:4');
});

test('an imported file is its data', async () => {
  const files = import.meta.glob('../../shared/words/en/cli.yaml', { eager: true, import: 'default' });
  expect(Object.values(files)).toEqual([expect.objectContaining({ verbs: 'Verbs' })]);
});

test('the hash of the engine is the same wherever it is asked for', async () => {
  const { default: imported } = await import('virtual:engine-hash');
  const { engineHash } = await import('../../shared/build/engineModule');
  expect(imported).toBe(engineHash());
  expect(imported).toMatch(/^[0-9a-f]{16}$/);
});

test('the hash of the prover is another one, over more', async () => {
  const { default: imported } = await import('virtual:prover-hash');
  const { engineHash, proverHash } = await import('../../shared/build/engineModule');
  expect(imported).toBe(proverHash());
  expect(imported).not.toBe(engineHash());
});

test('a scenario on the shelf says what to do and not what is wrong', () => {
  const files = import.meta.glob<object>('../../scenarios/*.yaml', {
    eager: true,
    import: 'default',
    query: '?shelf',
  });
  for (const data of Object.values(files)) {
    expect(data).toHaveProperty('deliver');
    for (const key of ['faults', 'answer', 'plans', 'teacher', 'debrief', 'contents', 'rubric', 'complaint'])
      expect(data).not.toHaveProperty(key);
    const text = JSON.stringify(data);
    for (const told of ['"sealer":', '"caps":', '"converted":true', '"done":', '"cans":'])
      expect(text).not.toContain(told);
  }
});
