import { describe, expect, it } from 'vitest';
import { bentIn, judgeCar, listedOn, turning, turningIn } from './signs';

describe('the table of signs by fault (its sources stand in its rows), on the sedan', () => {
  const { all, share, shown } = judgeCar('sedan');

  it('shows at least nine in ten of the signs at severity 0.6', () => {
    expect(share.length).toBeGreaterThan(200);
    expect(shown.length / share.length).toBeGreaterThanOrEqual(0.9);
  });

  it('bends only signs that are listed with a reason, and each of them', () => {
    const { must, may } = bentIn(all);
    const listed = listedOn('sedan', 'all');
    expect(must.filter((place) => !listed.includes(place))).toEqual([]);
    expect(listedOn('sedan', 'counted').filter((place) => !may.includes(place))).toEqual([]);
  });

  it('has readings that move one way with severity, but those listed with a reason', () => {
    const listed = turning
      .filter(({ vehicle }) => vehicle === 'sedan')
      .map(({ row, channel }) => `${row}: ${channel}`);
    expect(turningIn(all).filter((place) => !listed.includes(place))).toEqual([]);
  });
});
