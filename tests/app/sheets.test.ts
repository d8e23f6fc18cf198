/** The label under the bonnet as the page shows it: the maker's, nothing, or the label of a conversion over it. */
import { describe, expect, it } from 'vitest';
import { shelfScenario } from '../../shared/schema/shelfScenario';
import { bayLabelOf, sheetsOf } from '../../src/app/sheets';
import type { DisplayUnits } from '../../src/instruments/displayUnits';
import { scenarioById } from '../../src/session/scenario/library';

const { data } = scenarioById('warm-at-the-lights');
const pickup = shelfScenario({
  ...data,
  vehicle: 'pickup',
  contents: { ...data.contents, refrigerant: 'R-12' },
});
const units: DisplayUnits = { pressure: 'psi', temperature: 'degC', mass: 'g' };
const covered = { refrigerant: 'R-134a', grams: 935, oil: 'POE', mL: 265 };
const label = (over: typeof covered | null, car: Parameters<typeof sheetsOf>[0] = pickup): string => {
  const sheet = sheetsOf(car, units, over).find(({ id }) => id === 'label');
  return [...(sheet?.paragraphs ?? []), ...(sheet?.rows.flat() ?? [])].join(' ');
};

describe('the label', () => {
  it("is the maker's until a conversion's covers it, on paper and in the bay", () => {
    expect(label(null)).toContain('R-12');
    expect(label(covered)).toMatch(/R-134a, 935 g, oil POE, 265 mL/);
    expect(label(covered)).not.toMatch(/R-12\b/);
    expect(bayLabelOf(pickup, null)[1]).toMatch(/^R-12 1\.1/);
    expect(bayLabelOf(pickup, covered)[1]).toMatch(/^R-134a 0\.9/);
  });

  it('of a conversion can be read where the old one was gone', () => {
    const bare = { ...pickup, found: { ...pickup.found, label: 'none' } } as const;
    expect(label(null, bare)).toMatch(/no label/);
    expect(bayLabelOf(bare, null)).toEqual(['', '']);
    expect(label(covered, bare)).toContain('R-134a');
  });
});

describe('a can', () => {
  it('is printed with what the bench fills, else with what is in the car', () => {
    expect(pickup.bench.refrigerant).toBe('R-12');
    const filled = shelfScenario({ ...data, bench: { ...data.bench, refrigerant: 'R-1234yf' } });
    expect(filled.bench.refrigerant).toBe('R-1234yf');
  });
});
