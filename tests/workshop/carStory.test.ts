/** The running car of the workshop: what it shows beside a sound one, and how that is told. */
import { describe, expect, it } from 'vitest';
import type { ScenarioData } from '../../shared/schema/scenario';
import type { DisplayUnits } from '../../src/instruments/displayUnits';
import { scenarioById } from '../../src/session/scenario/library';
import { bandLine, carLines, isOutside } from '../../src/workshop/car/carLines';
import { waysOf } from '../../src/workshop/car/carRun';
import { BAND_K, type CarPiece, carStory } from '../../src/workshop/car/carStory';
import { jobWeather } from '../../src/workshop/car/jobWeather';

const METRIC: DisplayUnits = { pressure: 'kPa', temperature: 'degC', mass: 'g' };

function firstPieces(data: ScenarioData, count: number): CarPiece[] {
  const pieces: CarPiece[] = [];
  for (const piece of carStory(data, 'running')) {
    if (piece) pieces.push(piece);
    if (pieces.length === count) break;
  }
  return pieces;
}

function runsOf(data: ScenarioData) {
  const [piece] = firstPieces(data, 1);
  if (piece.kind !== 'runs') throw new Error('the runs come first');
  return piece;
}

const sound = scenarioById('warm-at-the-lights').data;
const short: ScenarioData = { ...sound, faults: [{ fault: 'low-charge', severity: 0.8, onset: '2 min' }] };

describe('the running car', () => {
  it('without a fault is the sound car, to the last bit', () => {
    const { own, sound: beside } = runsOf({ ...sound, faults: [] });
    expect(own.trace).toEqual(beside.trace);
    const lines = carLines(
      { data: { ...sound, faults: [] }, ...runsOf({ ...sound, faults: [] }), band: [] },
      METRIC,
    );
    expect(lines).toHaveLength(4);
    for (const line of lines) expect(line).toMatch(/as in a sound car\.$/);
  });

  it('short of charge shows less on both needles, in numbers and in words, and is there from the start', () => {
    const [first, ...band] = firstPieces(short, 3);
    if (first.kind !== 'runs') throw new Error('the runs come first');
    const { own, sound: beside } = first;
    expect(own.reading.high.meanPa).toBeLessThan(0.85 * beside.reading.high.meanPa);
    expect(own.reading.low.meanPa).toBeLessThan(0.8 * beside.reading.low.meanPa);
    expect(own.trace.highPa[60]).toBeLessThan(0.95 * beside.trace.highPa[60]);
    const lines = carLines({ data: short, ...first, band: [] }, METRIC);
    expect(lines[0]).toMatch(/^High side: .* where a sound car shows .* kPa\.$/);
    expect(lines.at(-1)).toMatch(/begins 02:00 into the job/);
    const points = band.flatMap((piece) => (piece.kind === 'point' ? [piece.at] : []));
    expect(points.map(({ ambientK }) => ambientK)).toEqual(
      [...BAND_K].sort((a, b) => Math.abs(a - first.ambientK) - Math.abs(b - first.ambientK)).slice(0, 2),
    );
    for (const at of points) expect(isOutside(at)).toBe(true);
    expect(
      bandLine(
        [...points].sort((a, b) => a.ambientK - b.ambientK),
        METRIC,
      ),
    ).toMatch(/^In all weather from/);
  });
});

it('a compressor that turns and slips is not said to turn as in a sound car', () => {
  const slipping: ScenarioData = { ...sound, faults: [{ fault: 'clutch-slipping', severity: 1 }] };
  const runs = runsOf(slipping);
  expect(runs.own.reading.hubSpeedRatio).toBeLessThan(0.9);
  expect(runs.sound.reading.hubSpeedRatio).toBe(1);
  const [, , , clutch] = carLines({ data: slipping, ...runs, band: [] }, METRIC);
  expect(clutch).toMatch(/^The compressor turns .* and slips: .* %.*; a sound car's turns/);
});

it('a car without an engine knows no idle', () => {
  expect(waysOf('hatchback')).toEqual(['running', 'idle', 'shut']);
  expect(waysOf('electric')).toEqual(['running', 'shut']);
});

it('the weather of a job is what its seeds bring', () => {
  const weather = { temperature: '30 degC', humidity: '50%' };
  expect(jobWeather({ ...sound, weather, varies: undefined })).toEqual([303.15, 303.15]);
  const varies = [{ what: 'temperature' as const, from: '28 degC', to: '33 degC' }];
  expect(jobWeather({ ...sound, weather, varies })).toEqual([301.15, 306.15]);
});
