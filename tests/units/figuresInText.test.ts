/** Figures of hints and debriefs in their reader's units, and that the library writes them so. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { sameFigures } from '../../shared/schema/sameFigures';
import { figuresFor } from '../../src/instruments/figureWords';
import { writeFigures } from '../../src/session/writeQuantity';
import { marksIn } from '../../src/units/figuresInText';

const IMPERIAL = { pressure: 'psi', temperature: 'degF', mass: 'oz' } as const;
const METRIC = { pressure: 'kPa', temperature: 'degC', mass: 'g' } as const;
const TEXT = 'Over {290 kPa}, under {4000 micron abs}, at {17 °C}, {1280 g} in; {what} stays.';

describe('a figure in braces', () => {
  it('is told in the units of its reader', () => {
    expect(figuresFor(TEXT, IMPERIAL)).toBe(
      'Over 42 psi, under 4,000 micron, at 63 °F, 45.2 oz in; {what} stays.',
    );
    expect(figuresFor(TEXT, METRIC)).toBe('Over 290 kPa, under 533 Pa, at 17 °C, 1,280 g in; {what} stays.');
    expect(figuresFor('some {18 kPa} more', METRIC)).toBe('some 18 kPa more');
    expect(figuresFor('at {67 psi}', METRIC)).toBe('at 460 kPa');
  });

  it('is told without a screen as everything is there', () => {
    expect(writeFigures('{67 psi} at {20 °C}, {4000 micron abs}')).toBe('462 kPa at 20 °C, 4,000 micron');
  });

  it('stands in braces in a translation too', () => {
    expect(sameFigures('over {290 kPa}', 'más de {290 kPa}')).toBeNull();
    expect(sameFigures('over {290 kPa}', 'más de 290 kPa')).toContain('{290 kPa}');
  });
});

describe.each(['scenarios', 'scenarios/es', 'scenarios/templates', 'scenarios/templates/es'])(
  'in %s',
  (under) => {
    const folder = new URL(`../../${under}/`, import.meta.url);
    const texts = readdirSync(folder)
      .filter((name) => name.endsWith('.yaml'))
      .flatMap((name): [string, string][] => {
        const { hints, debrief } = parse(readFileSync(new URL(name, folder), 'utf8'));
        return [...(hints ?? []), debrief ?? ''].map((text: string) => [name, text]);
      });

    it('hints and debriefs have every figure of a gauge or a scale in braces', () => {
      expect(texts.length).toBeGreaterThan(3);
      const bare = /\d ?(kPa|psi|bar|°C|°F|oz|k?g|micron|micras|degrees|grados)\b/;
      const left = texts.filter(([, text]) => bare.test(text.replace(/\{[^}]*\}/g, '')));
      expect(left).toEqual([]);
      const broken = texts.flatMap(([name, text]) => marksIn(text).map((one) => ({ name, ...one })));
      expect(broken.filter(({ isFigure }) => !isFigure)).toEqual([]);
    });
  },
);
