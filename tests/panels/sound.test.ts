import { describe, expect, test } from 'vitest';
import { newlyHappened } from '../../src/panels/newlyHappened';
import { captionBook } from '../../src/panels/sound/captionBook';
import { lastingNow } from '../../src/panels/sound/lastingNow';
import {
  blowerLoudness,
  engineLoudness,
  enginePitchHz,
  fanLoudness,
  hissLoudness,
} from '../../src/panels/sound/loudness';
import { HAPPENINGS_HEARD, momentOf } from '../../src/panels/sound/momentOf';
import { LASTING_SOUNDS, MOMENT_SOUNDS } from '../../src/panels/sound/soundIds';
import { lastingWords, momentWords, soundName, steadyWords } from '../../src/panels/sound/soundWords';
import { eventIds } from '../../src/session/conditions/eventIds';
import type { Happening, SessionView } from '../../src/session/corePort';

type Heard = Parameters<typeof lastingNow>[0];

/** A car of which only these signals are told. */
const car = (signals: Readonly<Record<string, number>>): Heard =>
  ({
    signal: (id: string) => signals[id] ?? Number.NaN,
    view: () => ({ hoses: [{ id: 'charging' }] }),
    layout: { parts: [{ id: 'fan' }] },
  }) as unknown as Heard;

const CUES: readonly (readonly [string, Readonly<Record<string, number>>])[] = [
  ['engine', { 'engine.rpm': 900 }],
  ['compressor', { 'clutch.turning': 1 }],
  ['fan', { 'fan.fan.speedRatio': 0.5 }],
  ['blower', { 'blower.turning': 1, 'blower.speed': 2 }],
  ['pump', { 'device.vacuum-pump.running': 1 }],
  ['recovery', { 'device.recovery-machine.running': 1 }],
  ['meteringHiss', { 'metering.hissing': 1, 'metering.hissRatio': 0.125 }],
  ['leakHiss', { 'leak.hissing': 1, 'leak.hissRatio': 0 }],
  ['spray', { 'spray.charging': 1 }],
  ['knocking', { 'compressor.knocking': 1 }],
  ['rattling', { 'compressor.rattling': 1 }],
  ['squeal', { 'clutch.squealing': 1 }],
];

describe('noises that last', () => {
  test.each(CUES)('%s is heard by its own cue alone, and stands in words', (id, signals) => {
    const noises = lastingNow(car(signals));
    expect(noises.map((noise) => noise.id)).toEqual([id]);
    expect(noises[0].loudness).toBeGreaterThan(0);
    const captions = [steadyWords(noises) ?? '', ...lastingWords(noises)].join(' ');
    expect(captions).toContain(soundName(noises[0].id));
  });

  test('every one of them has a cue here, and a car at rest makes none', () => {
    expect(CUES.map(([id]) => id)).toEqual([...LASTING_SOUNDS]);
    expect(lastingNow(car({ 'engine.rpm': 0, 'blower.turning': 0, 'fan.fan.speedRatio': 0 }))).toEqual([]);
  });

  test('what runs all the time stands in one line', () => {
    const noises = lastingNow(car({ 'engine.rpm': 900, 'clutch.turning': 1, 'fan.fan.speedRatio': 1 }));
    expect(steadyWords(noises)).toBe('Running: engine, condenser fan, compressor');
    expect(lastingWords(noises)).toEqual([]);
  });
});

test.each([
  ['engine', engineLoudness, 4000],
  ['engine pitch', enginePitchHz, 4000],
  ['blower', blowerLoudness, 4],
  ['fan', fanLoudness, 1],
  ['hiss', hissLoudness, 1],
] as const)('the %s never falls as its cause rises, and is nothing without it', (_, loudness, most) => {
  const heard = Array.from({ length: 41 }, (_, i) => loudness((most * i) / 40));
  expect(heard[0]).toBe(0);
  for (let i = 1; i < heard.length; i++) expect(heard[i]).toBeGreaterThan(heard[i - 1]);
  expect(loudness(0.5 * most)).toBeLessThanOrEqual(loudness(2 * most));
});

describe('noises of a moment', () => {
  test('each belongs to something that can happen, and has its words', () => {
    expect(HAPPENINGS_HEARD.filter((id) => !eventIds.includes(id))).toEqual([]);
    expect(new Set(HAPPENINGS_HEARD.map(momentOf))).toEqual(new Set(MOMENT_SOUNDS));
    expect(new Set(MOMENT_SOUNDS.map(soundName)).size).toBe(MOMENT_SOUNDS.length);
    expect(momentOf('noted')).toBeNull();
  });

  test('the same one again is counted in one line, and goes when it has not been heard for a while', () => {
    const book = captionBook();
    for (let bang = 0; bang < 23; bang++) book.hear('relief', 400 * bang);
    book.hear('clutchOut', 9000);
    expect(book.standing(9100).map(momentWords)).toEqual([
      'Bang: the relief valve blows, 23 times',
      'Click: the clutch lets go',
    ]);
    expect(book.standing(13_900).map(({ id }) => id)).toEqual(['clutchOut']);
    book.hear('relief', 20_000);
    expect(book.standing(20_000)).toEqual([{ id: 'relief', count: 1 }]);
  });

  test('only what is new since the last view is heard, oldest first; nothing on going back', () => {
    const at = (step: number, id: string): Happening =>
      ({ step, id, notable: false }) as unknown as Happening;
    const view = (step: number, happened: Happening[]): SessionView =>
      ({ step, happened }) as unknown as SessionView;
    const before = view(100, [at(90, 'clutch-in'), at(10, 'begun')]);
    const now = view(200, [at(180, 'clutch-in'), at(150, 'clutch-out'), ...before.happened]);
    expect(newlyHappened(before, now).map(({ step }) => step)).toEqual([150, 180]);
    expect(newlyHappened(now, before)).toEqual([]);
    expect(newlyHappened(view(100, [at(90, 'begun')]), view(900, [at(800, 'told')])).length).toBe(1);
  });
});
