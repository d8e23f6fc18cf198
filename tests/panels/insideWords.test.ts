import { expect, test } from 'vitest';
import { insideSentences } from '../../src/panels/insideWords';
import { word } from '../../src/words/words';

const standing = (massKg: number, lowPa: number, highPa: number): string[] => {
  const signals: Readonly<Record<string, number>> = {
    'compressor.massFlowKgPerS': 0,
    'loop.massKg': massKg,
    'lowSide.gaugePressurePa': lowPa,
    'highSide.gaugePressurePa': highPa,
  };
  return insideSentences({ signal: (id: string) => signals[id] } as never, {} as never, []);
};

test('a car that stands is said to even out, to have done so, or to be empty', () => {
  expect(standing(0.48, 300_000, 900_000)).toEqual([word('inside.says.resting')]);
  expect(standing(0.48, 500_000, 505_000)).toEqual([word('inside.says.even')]);
  expect(standing(0, 0, 0)).toEqual([word('inside.says.empty')]);
});
