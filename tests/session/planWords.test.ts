/** Plans and typed lines: the same words. */
import { describe, expect, it } from 'vitest';
import { planLinesSchema } from '../../shared/schema/plan';
import {
  LONGEST_WAIT_STEPS,
  readPlanLine,
  readWords,
  singleLines,
  wordsOf,
} from '../../src/session/plan/planWords';

describe('a line of a plan', () => {
  it('gives the same command in words and with names', () => {
    const inWords = readPlanLine('couple charging port-b side-middle,fender,mat');
    const named = readPlanLine({
      couple: { hose: 'charging', port: 'port-b', route: ['side-middle', 'fender', 'mat'] },
    });
    expect(inWords).toEqual(named);
    expect(inWords).toEqual({
      act: {
        kind: 'command',
        command: { do: 'couple', hose: 'charging', port: 'port-b', route: 'side-middle,fender,mat' },
      },
    });
  });

  it('may leave a list of zones out, and nothing else', () => {
    expect(readWords('couple charging port-b')).toMatchObject({ act: { command: { route: '' } } });
    expect(readWords('couple charging')).toMatchObject({
      problem: { reason: 'session.refused.argumentMissing' },
    });
    expect(readWords('wear goggles twice')).toMatchObject({
      problem: { reason: 'session.refused.noSuchArgument' },
    });
    expect(readWords('waer goggles')).toMatchObject({ problem: { params: { near: 'wear' } } });
    expect(readWords('engine fast')).toMatchObject({ problem: { reason: 'session.refused.notInRange' } });
  });

  it('waits by exact amounts, or until something happens', () => {
    expect(readPlanLine({ 'run-on': '1 min', times: 3 })).toEqual({
      act: { kind: 'wait', steps: 3000, untilNotable: false, times: 3 },
    });
    expect(readWords('run-on 10 s')).toMatchObject({ act: { steps: 500 } });
    expect(readWords('run 0.02 s')).toMatchObject({ act: { steps: 1 } });
    // a pump is run, too
    expect(readWords('run vacuum-pump on')).toMatchObject({
      act: { command: { do: 'run', device: 'vacuum-pump', to: 'on' } },
    });
    expect(readWords('run-on until something happens')).toMatchObject({
      act: { steps: LONGEST_WAIT_STEPS, untilNotable: true },
    });
    for (const wrong of ['run-on 5', 'run-on soon', 'run-on 0 s', 'run-on -3 s'])
      expect(readWords(wrong)).toHaveProperty('problem');
  });

  it('comes back as it was written', () => {
    for (const words of ['begin', 'can-valve can-1 4', 'couple charging port-b side-middle,mat']) {
      const reading = readWords(words);
      expect('act' in reading && reading.act.kind === 'command' && wordsOf(reading.act.command)).toBe(words);
    }
  });

  it('may be repeated with others', () => {
    const lines = singleLines([
      'begin',
      { repeat: ['shake can-1', { 'run-on': '10 s' }], times: 2 },
      'finish',
    ]);
    expect(lines).toEqual([
      'begin',
      'shake can-1',
      { 'run-on': '10 s' },
      'shake can-1',
      { 'run-on': '10 s' },
      'finish',
    ]);
  });

  it('has one form, and a mistake is told where it stands', () => {
    const problems = (lines: unknown): string[] =>
      planLinesSchema.safeParse(lines).error?.issues.map(({ path }) => path.join('.')) ?? [];
    expect(problems(['begin', { 'run-on': '2 min' }])).toEqual(['1.run-on']);
    expect(problems([{ 'run-on': '1 min', tmies: 3 }])).toEqual(['0']);
    expect(problems([{ repeat: ['a', { 'run-on': 'soon' }], times: 2 }])).toEqual(['0.repeat.1.run-on']);
    expect(problems([{ wear: { item: 'goggles' }, cap: {} }])).toEqual(['0']);
    expect(problems(['begin', { wear: { item: 'goggles' } }, { 'run-on': '10 s' }])).toEqual([]);
  });
});
