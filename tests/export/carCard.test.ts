import { describe, expect, test } from 'vitest';
import card from '../../src/cli/verbs/card';
import label from '../../src/cli/verbs/label';
import { carCard } from '../../src/export/card/carCard';
import { cardFigures } from '../../src/export/card/cardFigures';
import type { CardInputs } from '../../src/export/card/cardInputs';
import { chargeSums } from '../../src/export/card/chargeSums';
import { conversionLabel } from '../../src/export/card/conversionLabel';
import { labelFromLog, labelFromText } from '../../src/export/card/labelFromLog';
import type { Leaf } from '../../src/export/card/leaf';
import { sheetMarkup } from '../../src/export/card/sheetMarkup';
import { atmosphereAt, carOfKind } from '../../src/export/card/weatherWindows';
import { refrigerant } from '../../src/refrigerant/fluids';

const INPUTS: CardInputs = {
  labelChargeKg: 0.8,
  labelRefrigerant: 'R-134a',
  loop: 'orifice-tube',
  converts: false,
  convertedShare: 0.85,
  ambientK: 303.15,
  relativeHumidity: 0.5,
  altitudeM: 0,
  canNetKg: 0.34,
  jurisdiction: 'united-states',
};
const CONVERTED: CardInputs = { ...INPUTS, labelRefrigerant: 'R-12', labelChargeKg: 1, converts: true };
const fluid = refrigerant('R-134a');

const textOf = (part: Leaf | string): string =>
  typeof part === 'string' ? part : part.inside.map(textOf).join('\n');

describe('the sums', () => {
  test('are cans by their net contents and the rest by the scale', () => {
    const { fullCans, remainderKg, cansToHave, between } = chargeSums(INPUTS, fluid);
    expect([fullCans, cansToHave, between]).toEqual([2, 3, null]);
    expect(remainderKg).toBeCloseTo(0.12, 12);
    expect(chargeSums({ ...INPUTS, labelChargeKg: 0.68 }, fluid)).toMatchObject({
      fullCans: 2,
      remainderKg: 0,
      cansToHave: 2,
    });
  });

  test('take 85 % of an R-12 charge, of a usual 80 to 90', () => {
    const { targetKg, between } = chargeSums(CONVERTED, fluid);
    expect(targetKg).toBeCloseTo(0.85, 12);
    expect(between).toEqual([0.8, 0.9]);
  });

  test('know that a hose full of liquid keeps 39 g, of gas 1 g (trade review, from saturation tables)', () => {
    const { hoseLiquidKg, hoseGasKg } = chargeSums(INPUTS, fluid);
    expect(hoseLiquidKg).toBeCloseTo(0.039, 3);
    expect(hoseGasKg).toBeCloseTo(0.001, 3);
  });
});

describe('the windows of today', () => {
  const { weather } = cardFigures(INPUTS);

  test('are at rest the saturation line less the atmosphere: 669 kPa at 30 °C, less so much more high up', () => {
    expect(weather.restGaugePa / 1000).toBeCloseTo(770.2 - 101.3, 0);
    // International standard atmosphere at 1,600 m: 83.5 kPa
    expect(atmosphereAt(1600) / 1000).toBeCloseTo(83.5, 1);
  });

  test('are wide: 15 % either way of what a sound orifice car shows', () => {
    expect(weather.vehicle).toBe('sedan');
    expect(weather.high.toGaugePa / weather.high.fromGaugePa).toBeGreaterThan(1.15 / 0.85 - 1e-9);
    expect(weather.low.fromGaugePa).toBeGreaterThan(150_000);
    expect(weather.high.toGaugePa).toBeLessThan(1_700_000);
  });

  test('come from a car of the kind, the nearest in what is in it', () => {
    expect(carOfKind({ ...INPUTS, loop: 'expansion-valve' }, 'R-134a').id).toBe('hatchback');
    expect(carOfKind(CONVERTED, 'R-134a').metering.kind).toBe('orifice-tube');
    expect(carOfKind({ ...INPUTS, loop: 'expansion-valve' }, 'R-1234yf').label.refrigerant).toBe('R-1234yf');
  });
});

describe('the page', () => {
  const figures = cardFigures(INPUTS);

  test('says that inside does not mean full, where to stop, and whose law it is', () => {
    const text = textOf(carCard(INPUTS, figures));
    expect(text).toContain('Inside does not mean full.');
    expect(text).toContain('The scale says 800 g (28.2 oz) went into an emptied loop');
    expect(text).toContain('Clean Air Act section 609');
    expect(text).toContain('service information, local rules and licensed practice come first');
    expect(text).not.toContain('R-1234yf burns');
  });

  test('asks for the old charge in writing where it converts, and warns of a gas that burns', () => {
    expect(textOf(carCard(CONVERTED, figures))).toContain('Old charge and oil');
    const burning = { ...INPUTS, labelRefrigerant: 'R-1234yf' } as const;
    expect(textOf(carCard(burning, figures))).toContain('R-1234yf burns');
  });

  test('is one file that asks nothing of the network and takes text as text', () => {
    const page = sheetMarkup('t', conversionLabel({ chargeKg: 0.68, oil: '<PAG>', oilM3: 24e-5 }));
    expect(page).toContain('&lt;PAG&gt;');
    expect(page).not.toMatch(/(src|href)="/);
  });
});

describe('the conversion label', () => {
  test('says who, when, what and how much, and leaves a line for what is not known', () => {
    const sheet = conversionLabel({ chargeKg: 0.68, oil: 'PAG', oilM3: 24e-5, by: 'A. Hand' });
    const text = textOf(sheet);
    for (const said of ['680 g (24.0 oz)', 'HFC-134a, ASHRAE number R-134a', 'PAG', '240 mL', 'A. Hand'])
      expect(text).toContain(said);
    for (const line of ['Company', 'Address', 'Date', 'Lubricant maker', 'Trade name'])
      expect(text).toContain(line);
    expect(text).not.toMatch(/R-12\b/);
  });

  test('is the last one of a session that was not undone', () => {
    const written = (step: number, grams: number) => ({
      step,
      command: { do: 'label-conversion', refrigerant: 'R-134a', grams, oil: 'PAG', mL: 240 },
    });
    const back = { step: 20, command: { do: 'rewind', step: 20 } };
    const commands = [written(10, 700), written(20, 650), back] as never;
    expect(labelFromLog({ commands })).toEqual({
      refrigerant: 'R-134a',
      chargeKg: 0.7,
      oil: 'PAG',
      oilM3: expect.closeTo(24e-5, 9),
    });
    expect(labelFromText(JSON.stringify({ log: { commands } }))?.chargeKg).toBeCloseTo(0.7, 12);
    expect(labelFromLog({ commands: [] })).toBeNull();
    expect(() => labelFromText('{ "log": { "commands": [1] } }')).toThrow(RangeError);
  });
});

describe('the verbs', () => {
  const call = (verb: typeof card, options: object): void =>
    void verb.run({ options, operands: [] } as never, { json: () => {}, text: () => {} } as never);

  test('refuse a conversion that is not lawful, a number without its unit, and what no card can be made for', () => {
    const given = { charge: '800 g', loop: 'orifice-tube', ambient: '30 degC' };
    expect(() => call(card, { ...given, converted: true })).toThrow(/Only an R-12 car/);
    expect(() => call(card, { ...given, charge: '800' })).toThrow(/--charge.*unit/);
    expect(() => call(card, { ...given, ambient: '60 degC' })).toThrow(/ambientK has to be/);
    expect(() => call(card, { ...given, loop: 'tube' })).toThrow(/--loop/);
    expect(() => call(label, { charge: '800 g' })).toThrow(/--oil-amount/);
  });

  test('print no label of R-134a for a session that was labelled with something else', () => {
    const hash = '0123456789abcdef';
    const hashes = { stateHash: hash, engineHash: hash };
    const sessionOf = (refrigerant: string) => {
      const command = { do: 'label-conversion', refrigerant, grams: 900, oil: 'POE', mL: 240 };
      const log = {
        ...{ format: 'portside-session-1', scenarioId: 's', scenarioHash: hash, engineHash: hash, seed: 1 },
        ...{ mode: 'practice', commands: [{ step: 9, command }], lastStep: 9 },
      };
      return JSON.stringify({ log, last: { score: 0, reported: 0, logHash: hash, ...hashes } });
    };
    const print = (refrigerant: string) =>
      label.run(
        { options: { session: 's.json' }, operands: [] } as never,
        { json: (made: unknown) => made, readFile: () => sessionOf(refrigerant) } as never,
      );
    expect(() => print('R-12')).toThrow(/says R-12/);
    expect(print('R-134a')).toBe(0);
  });
});
