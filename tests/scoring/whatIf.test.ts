import { describe, expect, test } from 'vitest';
import whatIfVerb from '../../src/cli/verbs/whatIf';
import { whatIf } from '../../src/scoring/whatIf';
import type { SessionLog } from '../../src/session/corePort';
import { openSession } from '../../src/session/openSession';
import { playPlan } from '../../src/session/plan/playPlan';
import { scenarioById } from '../../src/session/scenario/library';
import { EditError, numberedCommands } from '../../src/session/whatIf/editLog';

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
