/** The machine of a session, walked by every plan that ships. */
import { expect, it } from 'vitest';
import states from '../../src/cli/verbs/states';
import { callVerb } from '../support/callVerb';

it('shows every transition as walked by a shipped plan or with a reason why not', async () => {
  const { code, out } = await callVerb([states], ['states', '--json']);
  const { states: all, walked, unwalked } = JSON.parse(out);
  expect(code).toBe(0);
  expect(all.length).toBeGreaterThan(20);
  expect(walked.length).toBeGreaterThan(unwalked.length);
  expect(unwalked.filter(({ reason }: { reason: string | null }) => reason === null)).toEqual([]);
}, 900_000);
