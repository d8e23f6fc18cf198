/** The record: what is kept of a run of a log. */
import { describe, expect, it } from 'vitest';
import type { Rule } from '../../shared/schema/rubric';
import { canonicalJson } from '../../src/session/canonicalJson';
import { liveLog } from '../../src/session/liveLog';
import { makeRecord } from '../../src/session/record/makeRecord';
import { rowAtStep, valueAt } from '../../src/session/record/record';
import { readSessionFile } from '../../src/session/sessionFile';
import { sessionFileText } from '../../src/session/sessionFileText';
import { connected, feeding, give, oneCore, oneJob } from '../support/oneJob';
import { onePlant } from '../support/onePlant';

const answer = { causes: ['leak'], parts: ['fan'] };

function session() {
  const core = oneCore();
  give(core, { do: 'begin' }, ...connected, ...feeding);
  core.advance(1490);
  give(core, { do: 'can-valve', can: 'can-1', turn: 0 }, { do: 'note-reading', channel: 'scale' });
  give(core, { do: 'diagnose', cause: 'leak', sure: 'likely' }, { do: 'replace', part: 'bottle' });
  core.advance(1025);
  give(core, { do: 'finish' });
  return core;
}
const core = session();
const record = makeRecord(core.log(), oneJob, answer, onePlant());

describe('a record', () => {
  it('has a row for each command, each second and the end, in rising order', () => {
    const { steps } = record;
    expect([...steps].every((step, row) => row === 0 || step >= steps[row - 1])).toBe(true);
    expect([...steps].filter((step) => step === 0)).toHaveLength(1 + connected.length + feeding.length);
    for (let second = 1; second <= 50; second++) expect(steps).toContain(50 * second);
    expect(steps.at(-1)).toBe(2515);
    expect(record.lastStep).toBe(2515);
  });

  it('has a row where a rule comes true between two seconds', () => {
    const stepped = oneCore();
    const at = stepped.channels.findIndex(({ id }) => id === 'lowSide.gaugePressurePa');
    const frame = new Float64Array(stepped.channels.length);
    const pressureNow = (): number => {
      stepped.writeFrame(frame);
      return frame[at];
    };
    give(stepped, { do: 'begin' }, ...connected, ...feeding);
    stepped.advance(1012);
    const before = pressureNow();
    stepped.advance(1);
    const limitKPa = (before + pressureNow()) / 2000;
    const rule: Rule = {
      id: 'tooMuch',
      domain: 'safety',
      points: 1,
      severity: 'critical',
      quotes: {},
      references: [],
      never: { signal: 'lowSide.gaugePressurePa', over: `${limitKPa} kPa` },
    };
    const ruled = makeRecord(core.log(), oneJob, answer, onePlant(), [rule]);
    expect(ruled.steps).toContain(1013);
    expect(valueAt(ruled, rowAtStep(ruled, 1013), 'lowSide.gaugePressurePa')).toBeGreaterThan(
      1000 * limitKPa,
    );
    expect(record.steps).not.toContain(1013);
  });

  it('numbers the actions and knows the row in which each had acted', () => {
    expect(record.actions.map(({ number }) => number)).toEqual(record.actions.map((_, at) => at + 1));
    const opened = record.actions.find(({ command }) => command.do === 'coupler');
    expect(valueAt(record, opened?.row as number, 'hose.charging.couplerOpen')).toBe(1);
    expect(valueAt(record, (opened?.row as number) - 1, 'hose.charging.couplerOpen')).toBe(0);
  });

  it('puts events into the row of their moment', () => {
    const noted = record.events.find(({ id }) => id === 'noted');
    expect(noted).toMatchObject({ step: 1490, subject: 'scale', unit: 'kg' });
    expect(noted?.quantity).toBe(valueAt(record, noted?.row as number, 'scale.massKg'));
  });

  it('measures the whole', () => {
    expect(record.measures).toMatchObject({
      'caps.offCount': 1,
      'hoses.leftCount': 1,
      'cause.wrongCount': 0,
      'parts.wrongCount': 1,
      'readings.count': 1,
    });
    const last = record.steps.length - 1;
    expect(record.measures['charge.errorKg']).toBeCloseTo(
      Math.abs(valueAt(record, last, 'loop.massKg') - 0.1),
      12,
    );
    expect(record.measures['label.errorKg']).toBeNaN();
  });

  it('is the same however often it is made', () => {
    const again = makeRecord(core.log(), oneJob, answer, onePlant());
    const plain = ({ values, ...rest }: typeof record) => ({ ...rest, values: [...values] });
    expect(plain(again)).toEqual(plain(record));
  });

  it('holds the life that was lived last, and how often the trainee went back', () => {
    const back = oneCore();
    give(back, { do: 'begin' }, ...connected);
    back.advance(300);
    give(back, ...feeding);
    back.advance(300);
    give(back, { do: 'rewind', step: 300 });
    back.advance(100);
    give(back, { do: 'finish' });
    const made = makeRecord(back.log(), oneJob, answer, onePlant());
    expect(made.wentBack).toBe(1);
    expect(made.lastStep).toBe(400);
    expect(made.actions.map(({ command }) => command.do)).not.toContain('can-valve');
    expect(made.events.map(({ id }) => id)).toContain('went-back');
  });

  it('finds the row of a step', () => {
    const row = rowAtStep(record, 120);
    expect(record.steps[row]).toBe(100);
    expect(record.steps[row + 1]).toBe(150);
    expect(() => valueAt(record, 0, 'nothing')).toThrow('no signal "nothing"');
  });
});

describe('what is saved', () => {
  it('comes back, and what is no session does not', () => {
    const hashes = {
      logHash: core.logHash(),
      stateHash: core.stateHash(),
      engineHash: core.log().engineHash,
    };
    const text = sessionFileText({ log: core.log(), last: { score: 81.5, reported: 74, ...hashes } });
    expect(readSessionFile(text).log).toEqual(core.log());
    expect(() => readSessionFile(text.replace('portside-session-1', 'other'))).toThrow('log.format');
    expect(() => readSessionFile(text.replace('"step":0', '"step":-1'))).toThrow('log.commands.0.step');
    expect(() => readSessionFile(`{"more":1,${text.slice(1)}`)).toThrow('more');
  });

  it('is one text whatever order it was put together in', () => {
    expect(canonicalJson({ b: [1, { d: null, c: undefined }], a: 'x' })).toBe('{"a":"x","b":[1,{"d":null}]}');
    expect(canonicalJson({ a: 'x', b: [1, { d: null }] })).toBe(
      canonicalJson({ b: [1, { d: null }], a: 'x' }),
    );
    expect(() => canonicalJson({ a: Number.NaN })).toThrow('NaN');
  });
});

describe('what holds of a log', () => {
  const at = (step: number, word: string, to?: number) =>
    ({ step, command: to === undefined ? { do: word } : { do: word, step: to } }) as never;
  const words = (...entries: never[]): string[] =>
    liveLog(entries).map(({ step, command }) => `${step} ${command.do}`);

  it('is all of it without a rewind', () => {
    expect(words(at(0, 'begin'), at(9, 'shake'))).toEqual(['0 begin', '9 shake']);
  });

  it('loses the command at the step gone back to, and all after it', () => {
    expect(words(at(0, 'begin'), at(9, 'tap'), at(9, 'shake'), at(20, 'tap'), at(30, 'rewind', 9))).toEqual([
      '0 begin',
      '9 tap',
      '9 rewind',
    ]);
  });

  it('loses one more each time the same step is gone back to', () => {
    const log = [at(0, 'begin'), at(9, 'tap'), at(9, 'shake'), at(9, 'rewind', 9), at(9, 'rewind', 9)];
    expect(words(...log)).toEqual(['0 begin', '9 rewind', '9 rewind']);
  });
});
