/** A session of a scenario that does not ship is run again by whoever has its file. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { dispatch } from '../../src/cli/dispatch';
import { type Io, processIo } from '../../src/cli/io';
import play from '../../src/cli/verbs/play';
import replay from '../../src/cli/verbs/replay';
import whatIf from '../../src/cli/verbs/whatIf';

const files = new Map([
  [
    'own.yaml',
    readFileSync('scenarios/weighed-in.yaml', 'utf8').replace(/^title: .*$/m, 'title: "Of my own"'),
  ],
  ['unknown.yaml', readFileSync('scenarios/weighed-in.yaml', 'utf8').replace(/^id: .*$/m, 'id: of-my-own')],
]);

async function call(...args: readonly string[]) {
  let out = '';
  const io: Io = {
    ...processIo,
    text: (said) => {
      out += said;
    },
    json: (data) => {
      out += JSON.stringify(data);
    },
    note: () => undefined,
    readFile: (file) => files.get(file) ?? '',
    writeFile: (file, text) => {
      files.set(file, String(text));
    },
  };
  return { code: await dispatch([play, replay, whatIf], args, io), out };
}

it('with --scenario and the very file; without it, or with another one, it is told and not run', async () => {
  await call('play', 'own.yaml', '--plan', 'nothing', '--save', 's.json');
  const shipped = await call('replay', 's.json');
  expect(shipped.code).toBe(1);
  expect(JSON.parse(shipped.out)[0]).toMatchObject({ sameScenario: false, holds: false, now: null });
  const own = await call('replay', 's.json', '--scenario', 'own.yaml');
  expect(own.code).toBe(0);
  expect(JSON.parse(own.out)[0]).toMatchObject({ sameScenario: true, holds: true });
  expect((await call('replay', 's.json', '--scenario', 'unknown.yaml')).code).toBe(1);
  expect((await call('what-if', 's.json')).code).toBe(2);
  const tried = await call('what-if', 's.json', '--scenario', 'own.yaml');
  expect(JSON.parse(tried.out).actions.length).toBeGreaterThan(0);
});
