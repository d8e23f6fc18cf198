import { describe, expect, test } from 'vitest';
import { valueAt } from '../../src/session/record/record';
import { expectedWindow, healthyGhost } from '../../src/suspects/expectedWindow';
import { live, runAndRead, withFault } from './sessions';

describe('the expected window', () => {
  test('is 15 % of the gauge pressure either way', () => {
    const { low, high, ventK } = expectedWindow(200_000, 1_500_000, 281);
    expect(low.fromGaugePa).toBeCloseTo(170_000, 6);
    expect(low.toGaugePa).toBeCloseTo(230_000, 6);
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

  test('tells nothing of a loop that the same commands have emptied or undone, nor of one that starts evacuated', () => {
    const { options } = live(withFault(null), ['begin']);
    const bench = { hoses: ['gauge-set'], cans: [], tools: ['recovery-machine'] } as const;
    const ghost = healthyGhost({ ...options, bench });
    for (const [hose, port, side] of [
      ['gauge-low', 'port-a', 'low'],
      ['gauge-high', 'port-b', 'high'],
    ] as const) {
      ghost.perform({ do: 'cap', port, to: 'off' });
      ghost.perform({ do: 'couple', hose, port, route: '' });
      ghost.perform({ do: 'coupler', hose, to: 'open' });
      ghost.perform({ do: 'manifold', side, turn: 16 });
    }
    expect(ghost.window().low.toGaugePa).toBeGreaterThan(400_000);
    ghost.perform({ do: 'attach', device: 'recovery-machine', onto: 'utility' });
    ghost.perform({ do: 'run', device: 'recovery-machine', to: 'on' });
    while (ghost.step < 15_000 && !Number.isNaN(ghost.window().high.fromGaugePa)) ghost.advance();
    expect(ghost.step).toBeLessThan(15_000);
    const told = [...Object.values(ghost.window().low), ...Object.values(ghost.window().high)];
    expect([...told, ...ghost.inside()].every(Number.isNaN)).toBe(true);

    const undone = healthyGhost(options);
    expect(undone.window().high.fromGaugePa).toBeGreaterThan(0);
    undone.perform({ do: 'open-loop', part: 'drier' });
    undone.perform({ do: 'open-loop', part: 'accumulator' });
    expect(undone.window().high.fromGaugePa).toBeNaN();
    expect(healthyGhost({ ...options, start: 'evacuated', chargeKg: 0 }).window().low.toGaugePa).toBeNaN();
  });
});
