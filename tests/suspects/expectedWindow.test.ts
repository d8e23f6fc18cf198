import { describe, expect, test } from 'vitest';
import { valueAt } from '../../src/session/record/record';
import { expectedWindow, healthyGhost } from '../../src/suspects/expectedWindow';
import { live, runAndRead, withFault } from './sessions';

describe('the expected window', () => {
  test('is 15 % of the gauge pressure either way, in a vacuum too', () => {
    const { low, high, ventK } = expectedWindow(-50_000, 1_500_000, 281);
    expect(low.fromGaugePa).toBeCloseTo(-57_500, 6);
    expect(low.toGaugePa).toBeCloseTo(-42_500, 6);
    expect(high.fromGaugePa).toBeCloseTo(1_275_000, 6);
    expect(high.toGaugePa).toBeCloseTo(1_725_000, 6);
    expect(ventK).toBe(281);
  });

  test('stepped with a sound car at label charge, the ghost is that car; with a dead fan it is not', () => {
    for (const [fault, inside] of [
      [null, true],
      ['condenser-fan-dead', false],
    ] as const) {
      const { record, options } = live(withFault(fault), runAndRead());
      const ghost = healthyGhost(options);
      for (const { step, command } of record.actions) {
        while (ghost.step < step) ghost.advance();
        ghost.perform(command);
      }
      while (ghost.step < record.lastStep) ghost.advance();
      const { high, low, ventK } = ghost.window();
      const at = (signal: string) => valueAt(record, record.steps.length - 1, signal);
      const highPa = at('highSide.gaugePressurePa');
      expect(highPa > high.fromGaugePa && highPa < high.toGaugePa).toBe(inside);
      if (!inside) continue;
      expect(high.gaugePa).toBe(highPa);
      expect(low.gaugePa).toBe(at('lowSide.gaugePressurePa'));
      expect(ventK).toBe(at('vent.temperatureK'));
    }
  });

  test('goes back with the session', () => {
    const { options } = live(withFault(null), ['begin']);
    const ghost = healthyGhost(options);
    const start = ghost.snapshot();
    const before = ghost.window();
    ghost.perform({ do: 'engine', rpm: 1500 });
    ghost.perform({ do: 'ac', to: 'on' });
    for (let step = 0; step < 500; step++) ghost.advance();
    expect(ghost.window().high.gaugePa).toBeGreaterThan(before.high.gaugePa);
    ghost.restore(start);
    expect(ghost.step).toBe(0);
    expect(ghost.window()).toEqual(before);
  });
});
