import { describe, expect, test } from 'vitest';
import { type JobClock, jobClock } from '../../src/app/jobClock';

/** Runs everything that is due at a wall time; what fired may be said. */
function slice(clock: JobClock, wallMs: number, notable: string | null = null): number {
  const { steps } = clock.due(wallMs);
  clock.ran(steps, notable, false);
  return steps;
}

describe('the job clock', () => {
  test('is held at first, however long one waits', () => {
    const clock = jobClock();
    expect(slice(clock, 0) + slice(clock, 5000)).toBe(0);
  });

  test.each([1, 10, 60, 240] as const)('runs %i job seconds in a wall second', (lapse) => {
    const clock = jobClock();
    slice(clock, 0);
    clock.setLapse(lapse);
    let steps = 0;
    for (let wallMs = 16; wallMs <= 1000; wallMs += 16) steps += slice(clock, wallMs);
    expect(Math.abs(steps - 992 * 0.05 * lapse)).toBeLessThanOrEqual(1);
  });

  test.each(['1min', 3000] as const)('runs on by exactly what was asked (%s), then is held', (how) => {
    const clock = jobClock();
    clock.startRunOn(how);
    expect(clock.due(0).steps).toBe(3000);
    expect(clock.ran(1000, null, false)).toBe(false);
    expect(clock.due(1)).toEqual({ steps: 2000, untilNotable: false });
    expect(clock.ran(2000, null, false)).toBe(true);
    expect([clock.lapse, clock.runningOn]).toEqual([0, null]);
  });

  test('an exact run goes through what is notable, a run until something happens stops there', () => {
    const exact = jobClock();
    exact.startRunOn('10s');
    expect(exact.ran(100, 'clutchStill', false)).toBe(false);
    const until = jobClock();
    until.startRunOn('notable');
    expect(until.due(0).untilNotable).toBe(true);
    expect(until.ran(100, 'clutchStill', false)).toBe(true);
    expect(until.lapse).toBe(0);
  });

  test('falls back to ×1 from a lapse, and stays at ×1 from ×1', () => {
    const clock = jobClock();
    clock.setLapse(60);
    expect(clock.ran(10, 'clutchStill', false)).toBe(true);
    expect(clock.lapse).toBe(1);
    expect(clock.ran(10, 'clutchStill', false)).toBe(false);
  });

  test('falls back once for a needle that rests, until a hand has done something', () => {
    const clock = jobClock();
    const rests = (id: string): boolean => {
      clock.setLapse(60);
      return clock.ran(10, id, false);
    };
    expect([rests('lowGaugeRests'), rests('lowGaugeRests'), rests('scaleRests')]).toEqual([
      true,
      false,
      true,
    ]);
    expect(clock.lapse).toBe(1);
    expect([rests('lowGaugeRests'), clock.lapse]).toEqual([false, 60]);
    expect([rests('tripped'), rests('tripped')]).toEqual([true, true]);
    clock.acted();
    expect(rests('lowGaugeRests')).toBe(true);
  });

  test('a rest told of a lapse still ends a run until something happens', () => {
    const clock = jobClock();
    clock.setLapse(60);
    clock.ran(10, 'lowGaugeRests', false);
    clock.startRunOn('notable');
    expect(clock.ran(10, 'lowGaugeRests', false)).toBe(true);
  });

  test('a hidden page costs no job time', () => {
    const clock = jobClock();
    clock.setLapse(1);
    slice(clock, 0);
    clock.pause(true);
    expect(slice(clock, 60_000)).toBe(0);
    clock.pause(false);
    expect(slice(clock, 60_010)).toBe(0);
    expect(slice(clock, 60_110)).toBe(5);
  });

  test('a session that is stuck is held', () => {
    const clock = jobClock();
    clock.setLapse(10);
    expect(clock.ran(0, null, true)).toBe(true);
    expect(clock.lapse).toBe(0);
  });
});
