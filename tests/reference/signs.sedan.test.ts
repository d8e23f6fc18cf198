import { describe, expect, it } from 'vitest';
import { bentSigns, judgeCar, placesOf } from './signs';

describe('the table of signs by fault (its sources stand in its rows), on the sedan', () => {
  const { counted, shown, bent } = judgeCar('sedan');

  it('shows at least nine in ten of the counted signs', () => {
    expect(counted.length).toBeGreaterThan(100);
    expect(shown.length / counted.length).toBeGreaterThanOrEqual(0.9);
  });

  it('bends only signs that are listed with a reason, and each of them', () => {
    const listed = bentSigns.filter(({ vehicle }) => vehicle === 'sedan');
    expect(placesOf(bent)).toEqual(listed.map(({ row, channel }) => `${row}: ${channel}`).sort());
  });
});
