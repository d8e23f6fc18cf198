/** `suspects`, as a shell sees it. */
import { describe, expect, test } from 'vitest';
import { dispatch } from '../../src/cli/dispatch';
import { processIo, toJson } from '../../src/cli/io';
import suspects from '../../src/cli/verbs/suspects';
import { type SessionFile, sessionFileText } from '../../src/session/sessionFileText';
import { atTheLights, live } from './sessions';

const { log } = live(atTheLights, [
  'begin',
  'windows open',
  'blower 4',
  'engine 900',
  'ac on',
  { 'run-on': '10 s' },
  'look fan',
  'probe-air outside',
  { 'run-on': '10 s' },
  'note-reading air',
]);
const NO_HASH = '0000000000000000';
const nothing = { score: 0, reported: 0, logHash: NO_HASH, stateHash: NO_HASH, engineHash: log.engineHash };

async function call(file: Partial<SessionFile['log']> | string) {
  const text = typeof file === 'string' ? file : sessionFileText({ log: { ...log, ...file }, last: nothing });
  let out = '';
  let notes = '';
  const code = await dispatch([suspects], ['suspects', 's.session.json', '--json'], {
    ...processIo,
    json: (value) => {
      out += toJson(value, 2);
    },
    note: (line) => {
      notes += line;
    },
    readFile: () => text,
  });
  return { code, out, notes };
}

describe('suspects', () => {
  test('prints each reading with what was believed after it, the same bytes each time', async () => {
    const first = await call({});
    expect(first).toMatchObject({ code: 0, notes: '' });
    const { prior, readings } = JSON.parse(first.out);
    expect(readings).toMatchObject([
      { step: 500, channel: 'fan.fan.turning', value: 0, unit: 'bool', counts: true },
      { step: 1000, channel: 'air@outside', unit: 'K', counts: true },
    ]);
    const [look, air] = readings;
    expect(look.posterior['condenser-fan-dead']).toBeGreaterThan(3 * prior['condenser-fan-dead']);
    expect(look.ghosts['nothing-wrong']).toBe(1);
    expect(air.posterior['condenser-fan-dead']).toBeCloseTo(look.posterior['condenser-fan-dead'], 5);
    expect((await call({})).out).toBe(first.out);
  });

  test('takes no file that is not a session, nor one it cannot live again', async () => {
    for (const file of [
      'not JSON',
      { scenarioId: 'no-such' },
      { engineHash: NO_HASH },
      { scenarioHash: NO_HASH },
    ]) {
      const { code, out, notes } = await call(file);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(notes).toContain('s.session.json');
    }
  });
});
