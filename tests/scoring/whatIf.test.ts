import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import whatIfVerb from '../../src/cli/verbs/whatIf';
import { hashFloats } from '../../src/numerics/hash';
import { whatIf } from '../../src/scoring/whatIf';
import type { SessionLog } from '../../src/session/corePort';
import { openSession } from '../../src/session/openSession';
import { playPlan } from '../../src/session/plan/playPlan';
import type { SessionRecord } from '../../src/session/record/record';
import { recordOf } from '../../src/session/recordOf';
import { scenarioById } from '../../src/session/scenario/library';
import { EditError, editLog, type NumberedCommand, numberedCommands } from '../../src/session/whatIf/editLog';
import { liveSession, openReruns } from '../../src/session/whatIf/openReruns';
import { toEnd } from '../../src/session/whatIf/toEnd';

const scenario = scenarioById('warm-at-the-lights');

/** Twenty seconds of work, with a look at the fan that changes nothing. */
const LINES = [
  'begin',
  'door open',
  'windows open',
  { 'run-on': '10 s' },
  'look fan',
  'cap port-a off',
  'couple charging port-a side-middle,fender,mat',
  'coupler charging open',
  'engine 1500',
  { 'run-on': '10 s' },
  'finish',
] as const;

function played(
  lines: readonly (string | { readonly 'run-on': '10 s' })[],
  mode: 'assessed' | 'practice',
): SessionLog {
  const core = openSession(scenario, { mode, seed: 1 });
  expect(playPlan(core, lines as never)).toEqual([]);
  return core.log();
}

const log = played(LINES, 'assessed');
const numberOf = (deed: string): number => {
  const found = numberedCommands(log).find(({ command }) => command.do === deed);
  if (!found) throw new Error(`no ${deed}`);
  return found.number;
};

describe('a session with something done otherwise', () => {
  test('is the same to the last bit without an action that did nothing', () => {
    const found = whatIf(scenario, log, [{ kind: 'drop', number: numberOf('look') }]);
    expect(found.firstDifferentStep).toBeNull();
    expect(found.after.stateHash).toBe(found.before.stateHash);
    expect(found.after.score.score).toBe(found.before.score.score);
  });

  test('parts at the step after the action that was changed', () => {
    const found = whatIf(scenario, log, [
      { kind: 'set', number: numberOf('engine'), name: 'rpm', value: '900' },
    ]);
    expect(found.firstDifferentStep).toBe(501);
    expect(found.refused).toEqual([]);
    expect(found.after.stateHash).not.toBe(found.before.stateHash);
  });

  test('parts where an action was given first, when it is given later', () => {
    const found = whatIf(scenario, log, [{ kind: 'move', number: numberOf('engine'), bySteps: 150 }]);
    expect(found.firstDifferentStep).toBe(501);
    expect(found.after.lastStep).toBe(log.lastStep);
  });

  test('lists what can no longer be done', () => {
    const found = whatIf(scenario, log, [{ kind: 'drop', number: numberOf('cap') }]);
    expect(found.refused.map(({ command }) => command.do)).toEqual(['couple', 'coupler']);
  });

  test('has nothing to edit where there is no such action, and takes no value a command could not have', () => {
    expect(() => whatIf(scenario, log, [{ kind: 'drop', number: 99 }])).toThrow(EditError);
    const wild = { kind: 'set', number: numberOf('engine'), name: 'rpm', value: '9000' } as const;
    expect(() => whatIf(scenario, log, [wild])).toThrow(/notInRange/);
  });

  test('leaves out what was undone by going back', () => {
    const core = openSession(scenario, { mode: 'practice', seed: 1 });
    playPlan(core, ['begin', 'door open', { 'run-on': '10 s' }, 'windows open'] as never);
    core.send({ do: 'rewind', step: 500 });
    playPlan(core, ['ac on'] as never);
    expect(numberedCommands(core.log()).map(({ number, command }) => [number, command.do])).toEqual([
      [1, 'begin'],
      [2, 'door'],
      [5, 'ac'],
    ]);
  });
});

test.each([
  ['assessed', LINES],
  [
    'practice',
    [
      'begin',
      'door open',
      'engine 900',
      'cap port-a off',
      'couple charging port-a side-middle,fender,mat',
      'coupler charging open',
      { 'run-on': '10 s' },
      'look fan',
      'begin',
      { 'run-on': '10 s' },
      'finish',
    ],
  ],
] as const)('a session lived with checkpoints has the record of its log: %s', (mode, lines) => {
  const core = openSession(scenario, { mode, seed: 1 });
  playPlan(core, lines as never);
  const own = core.log();
  expect(own.commands.filter(({ command }) => command.do === 'begin').length).toBe(
    mode === 'practice' ? 2 : 1,
  );
  const once = toEnd(liveSession(scenario, own));
  expect(once.record).toEqual(recordOf(scenario, own));
  expect(structuredClone(once)).toEqual(once);
});

describe('reruns from checkpoints', () => {
  const reruns = toEnd(openReruns(scenario, log));

  /** Everything from the start, through the session's own door. */
  function inFull(entries: readonly NumberedCommand[]) {
    const core = openSession(scenario, { mode: log.mode, seed: log.seed });
    const refused = entries.flatMap(({ step, command, number }) => {
      core.advance(step - core.step);
      return core.send(command).ok ? [] : [number];
    });
    core.advance(log.lastStep - core.step);
    const record = printOf(recordOf(scenario, core.log()));
    return { stateHash: core.stateHash(), lastStep: core.step, refused, record };
  }

  const printOf = ({ steps, values, events, actions, transitions, measures }: SessionRecord) => ({
    rows: [steps.length, hashFloats(Float64Array.from(steps)), hashFloats(values)],
    events,
    actions,
    transitions,
    measures,
  });

  const anEdit = fc.oneof(
    fc.record({ kind: fc.constant('drop' as const), number: fc.integer({ min: 2, max: 9 }) }),
    fc.record({
      kind: fc.constant('move' as const),
      number: fc.integer({ min: 2, max: 9 }),
      bySteps: fc.integer({ min: -600, max: 600 }),
    }),
    fc.record({
      kind: fc.constant('set' as const),
      number: fc.constant(numberOf('engine')),
      name: fc.constant('rpm'),
      value: fc.constantFrom('0', '900', '1500', '3000'),
    }),
  );

  test('give the same as running everything from the start, bit for bit', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(anEdit, { minLength: 1, maxLength: 3, selector: ({ number }) => number }),
        (edits) => {
          const edited = editLog(reruns.once.entries, edits);
          const found = toEnd(reruns.again(edited));
          expect({
            stateHash: found.stateHash,
            lastStep: found.lastStep,
            refused: found.refused.map(({ number }) => number),
            record: printOf(found.record),
          }).toEqual(inFull(edited));
          expect(found.firstDifferentStep === null).toBe(found.stateHash === reruns.once.stateHash);
        },
      ),
      { numRuns: 12, seed: 7 },
    );
  });

  test('are the session itself again when nothing is changed any more', () => {
    const found = toEnd(reruns.again(reruns.once.entries));
    expect([found.stateHash, found.stepsRun]).toEqual([reruns.once.stateHash, 0]);
  });

  test('run on only until both stand alike, and take the rest as it was', () => {
    const long = played(
      [...LINES.slice(0, 5), ...Array(18).fill({ 'run-on': '10 s' }), ...LINES.slice(5)],
      'assessed',
    );
    const ready = toEnd(openReruns(scenario, long));
    const look = numberedCommands(long).find(({ command }) => command.do === 'look');
    const without = editLog(ready.once.entries, [{ kind: 'drop', number: look?.number ?? 0 }]);
    const found = toEnd(ready.again(without));
    expect(found.firstDifferentStep).toBeNull();
    expect(found.stepsRun).toBeLessThan(0.7 * long.lastStep);
    expect(found.record.values.length).toBeLessThan(ready.once.record.values.length);
    expect(found.record.actions.at(-1)).toMatchObject({ number: without.length, command: { do: 'finish' } });
    expect(found.stateHash).toBe(ready.once.stateHash);
  });

  test('carry on where practice would have held the clock', () => {
    const careless = played(
      ['begin', 'door open', 'cap port-a off', { 'run-on': '10 s' }, 'finish'],
      'practice',
    );
    const ready = toEnd(openReruns(scenario, careless));
    const found = toEnd(
      ready.again(editLog(ready.once.entries, [{ kind: 'move', number: 3, bySteps: 100 }])),
    );
    expect(found.refused).toEqual([]);
    expect(found.lastStep).toBe(careless.lastStep);
  });
});

describe('the verb', () => {
  const call = (options: Readonly<Record<string, readonly string[]>>): unknown => {
    let printed: unknown;
    const file = JSON.stringify({
      log,
      last: {
        score: 0,
        reported: 0,
        logHash: '0'.repeat(16),
        stateHash: '0'.repeat(16),
        engineHash: log.engineHash,
      },
    });
    const io = { json: (value: unknown) => (printed = value), readFile: () => file };
    const given = { drop: [], move: [], set: [], json: true, ...options };
    whatIfVerb.run({ options: given, operands: ['s.json'] } as never, io as never);
    return printed;
  };

  test('says both scores and the reason of each refusal', () => {
    const said = call({ drop: [String(numberOf('cap'))] });
    expect(said).toMatchObject({ sameState: false, before: {}, after: {} });
    const { refused } = said as { refused: readonly { action: string; reason: string }[] };
    expect(refused[0].action).toBe('couple charging port-a side-middle,fender,mat');
    expect(refused[0].reason).toMatch(/[a-z]{3}/);
  });

  test('lists the actions where nothing is changed, and refuses what is no edit', () => {
    expect(call({})).toMatchObject({
      actions: [{ number: 1, step: 0, action: 'begin' }, {}, {}, {}, {}, {}, {}, {}, {}],
    });
    expect(() => call({ move: ['3'] })).toThrow(/no edit/);
    expect(() => call({ drop: ['99'] })).toThrow(/no action 99/);
  });
});
