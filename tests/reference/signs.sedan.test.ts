import { describe, expect, it } from 'vitest';
import { bentSigns } from '../../src/faults/bentSigns';
import { judgeCar, placed, placesOf, turning, turningIn } from './signs';

describe('the table of signs by fault (its sources stand in its rows), on the sedan', () => {
  const { all, counted, shown, bent } = judgeCar('sedan');

  it('shows at least nine in ten of the counted signs', () => {
    expect(counted.length).toBeGreaterThan(250);
    expect(shown.length / counted.length).toBeGreaterThanOrEqual(0.9);
  });

  it('bends only signs that are listed with a reason, and each of them', () => {
    const listed = bentSigns.filter(({ vehicle }) => vehicle === 'sedan');
    expect(placesOf(bent)).toEqual(
      listed.map(({ row, channel, ambientsC }) => placed(`${row}: ${channel}`, ambientsC)).sort(),
    );
  });

  it('has readings that move one way with severity, but those listed with a reason', () => {
    const listed = turning.filter(({ vehicle }) => vehicle === 'sedan');
    expect(turningIn(all)).toEqual(listed.map(({ row, channel }) => `${row}: ${channel}`).sort());
  });
});
