import { describe, expect, it } from 'vitest';
import type { CanSpec } from '../../src/equipment/cans';
import { TOOL_IDS } from '../../src/equipment/tools';
import type { Command } from '../../src/plant/commandSpecs';
import { serviceBench } from '../support/serviceBench';

const TANK = 'charging-tank';
const CAN: CanSpec = { id: 'can-1', netKg: 0.34, printedTotalKg: 0.37, tareKg: 0.1 };
const valve = (turn: number): Command => ({ do: 'tank-valve', tank: TANK, turn });
const attach = (device: string): Command => ({ do: 'attach', device, onto: 'utility' });

function emptyCar() {
  return serviceBench('hatchback', 22, { start: 'evacuated', chargeKg: 0 });
}

describe('a charging tank', () => {
  /** Grams that the scale says went out in half a minute. */
  const given = (way: 'upright' | 'inverted'): number => {
    const bench = emptyCar();
    bench.give({ do: 'cap', port: 'port-a', to: 'off' });
    bench.give(
      { do: 'couple', hose: 'gauge-high', port: 'port-a', route: '' },
      { do: 'coupler', hose: 'gauge-high', to: 'open' },
      { do: 'manifold', side: 'high', turn: 16 },
      attach(TANK),
    );
    if (way === 'inverted') bench.give({ do: 'stand-tank', tank: TANK, way });
    bench.run(3);
    const before = bench.value('chargingScale.massKg');
    const loopKg = bench.value('loop.massKg');
    expect(bench.give(valve(16))).toEqual(['tank-opened', 'tank-open-to:high']);
    bench.run(30);
    bench.give(valve(0));
    bench.run(3);
    const out = before - bench.value('chargingScale.massKg');
    // what the scale says went into the loop, but for what the hoses hold
    expect(Math.abs(bench.value('loop.massKg') - loopKg - out)).toBeLessThan(0.08);
    expect(bench.plant.books().massErrorRelative).toBeLessThan(1e-12);
    return 1000 * out;
  };

  it('gives liquid upside down and much less, as vapour, upright; the scale tells how much', () => {
    const [liquid, vapour] = [given('inverted'), given('upright')];
    expect(liquid).toBeGreaterThan(150);
    expect(vapour).toBeGreaterThan(10);
    expect(vapour).toBeLessThan(0.4 * liquid);
  });

  it('left open with no hose on it blows into the bay, and every gram is booked', () => {
    const bench = emptyCar();
    const before = bench.value('chargingTank.netKg');
    expect(bench.give(valve(8))).toContain('opened-to-air:charging-tank');
    bench.run(10);
    const lost = before - bench.value('chargingTank.netKg');
    expect(lost).toBeGreaterThan(0.005);
    expect(Math.abs(bench.value('vented.kg') - lost)).toBeLessThan(1e-9);
  });
});

describe('a can in warm water', () => {
  it('gives several times what a can that nobody touches gives', () => {
    const left = (at: 'mat' | 'bath'): number => {
      const bench = serviceBench('hatchback', 22, {
        chargeKg: 0.2,
        bench: { hoses: ['charging'], cans: [CAN], tools: [] },
      });
      if (at === 'bath') bench.give({ do: 'place', can: 'can-1', at });
      bench.give(
        { do: 'windows', to: 'open' },
        { do: 'ac', to: 'on' },
        { do: 'blower', speed: 4 },
        { do: 'engine', rpm: 1500 },
        { do: 'cap', port: 'port-b', to: 'off' },
        { do: 'couple', hose: 'charging', port: 'port-b', route: '' },
        { do: 'coupler', hose: 'charging', to: 'open' },
        { do: 'tap', can: 'can-1', onto: 'charging' },
        { do: 'can-valve', can: 'can-1', turn: 16 },
      );
      bench.run(300);
      return bench.value('can.can-1.netKg');
    };
    const [cold, warm] = [left('mat'), left('bath')];
    expect(CAN.netKg - warm).toBeGreaterThan(2.5 * (CAN.netKg - cold));
  });
});

describe('nitrogen', () => {
  it('comes at what the regulator is set to, stands on a tight car and falls with a leak', () => {
    const fallPa = (faults: { id: string; severity: number; onsetStep: number }[]): number => {
      const bench = serviceBench('hatchback', 22, { start: 'evacuated', chargeKg: 0, faults });
      bench.couple();
      bench.give(attach('nitrogen'), { do: 'regulator', kPa: 1000 });
      bench.run(120);
      expect(Math.abs(bench.value('lowSide.gaugePressurePa') - 1e6)).toBeLessThan(10_000);
      bench.give({ do: 'regulator', kPa: 0 });
      bench.run(60);
      const before = bench.value('lowGauge.gaugePressurePa');
      bench.run(300);
      return before - bench.value('lowGauge.gaugePressurePa');
    };
    expect(fallPa([])).toBeLessThan(4000);
    expect(fallPa([{ id: 'leak', severity: 0.3, onsetStep: 0 }])).toBeGreaterThan(10_000);
  });
});

describe('oil and identifier', () => {
  it('oil goes in where a way is open, and is booked as brought in', () => {
    const bench = serviceBench('hatchback', 22);
    const oil = (): number => bench.parts.car.network.books().heldKg.oil;
    bench.give(attach('oil-injector'));
    expect(bench.plant.apply({ do: 'inject-oil', mL: 30 })).toMatchObject({ reason: 'refusal.oilNoWay' });
    bench.couple();
    const before = oil();
    expect(bench.give({ do: 'inject-oil', mL: 30 })).toEqual(['oil-injected:low']);
    expect(oil() - before).toBeCloseTo(0.0297, 6);
    expect(bench.value('oilInjector.leftM3')).toBeCloseTo(90e-6, 9);
    bench.run(10);
    expect(bench.parts.car.network.books().massErrors.oil).toBeLessThan(1e-12);
  });

  it('the identifier names a mixed gas after its sampling time, for a few grams', () => {
    const bench = serviceBench('hatchback', 22, {
      faults: [{ id: 'mixed-refrigerant', severity: 0.5, onsetStep: 0 }],
    });
    bench.give({ do: 'cap', port: 'port-b', to: 'off' }, { do: 'identify', port: 'port-b' });
    bench.run(50);
    expect(bench.value('identifier.r134aShare')).toBeNaN();
    expect(bench.run(40)).toContain('sample-identified:port-b');
    const shares = ['r134a', 'r12', 'r1234yf', 'hydrocarbon', 'air'].map((gas) =>
      bench.value(`identifier.${gas}Share`),
    );
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 1);
    // a fifth of the charge is foreign; what stands in the gas differs by its volatility
    expect(shares[0]).toBeGreaterThan(0.6);
    expect(1 - shares[0]).toBeGreaterThan(0.1);
    expect(bench.value('vented.kg')).toBeGreaterThan(0.0005);
    expect(bench.value('vented.kg')).toBeLessThan(0.006);
    expect(bench.give({ do: 'note-reading', channel: 'gas-r134a' })).toEqual(['noted:gas-r134a']);
  });
});

describe('the bench', () => {
  it('says in words what does not go, and one thing at a time goes on a hose', () => {
    const bench = serviceBench('sedan', 22, {
      bench: { hoses: ['charging', 'gauge-set'], cans: [CAN], tools: TOOL_IDS },
    });
    const refusal = (command: Command): string => {
      const outcome = bench.plant.apply(command);
      return outcome.ok ? 'done' : outcome.reason;
    };
    expect(refusal({ do: 'run', device: 'vacuum-pump', to: 'on' })).toBe('refusal.deviceLoose');
    expect(refusal({ do: 'attach', device: 'vacuum-pump', onto: 'gauge-low' })).toBe('refusal.noInlet');
    bench.give({ do: 'tap', can: 'can-1', onto: 'utility' });
    expect(refusal(attach('vacuum-pump'))).toBe('refusal.inletTaken');
    bench.give({ do: 'untap', can: 'can-1' }, attach('vacuum-pump'));
    expect(refusal({ do: 'tap', can: 'can-1', onto: 'utility' })).toBe('refusal.tapTaken');
    expect(refusal({ do: 'attach', device: 'micron-gauge', onto: 'utility' })).toBe('done');
    expect(refusal({ do: 'run', device: 'micron-gauge', to: 'on' })).toBe('refusal.noSwitch');
    expect(refusal({ do: 'identify', port: 'port-a' })).toBe('refusal.capOn');
  });

  it('come off a hose that shuts its own end and keeps what it holds, the way to the car open', () => {
    const bench = serviceBench('hatchback', 22);
    bench.couple();
    bench.give(attach('recovery-machine'));
    bench.run(10);
    const [vented, low] = [bench.plant.books().ventedKg, bench.value('lowSide.gaugePressurePa')];
    expect(low).toBeGreaterThan(400_000);
    expect(bench.give({ do: 'detach', device: 'recovery-machine' })).toEqual([
      'device-detached:recovery-machine',
    ]);
    bench.run(20);
    expect(bench.plant.books().ventedKg).toBe(vented);
    expect(bench.value('lowSide.gaugePressurePa')).toBeGreaterThan(low - 20_000);
  });

  it('comes back whole from a snapshot', () => {
    const bench = serviceBench('hatchback', 22);
    bench.couple();
    bench.give(attach('recovery-machine'), { do: 'run', device: 'recovery-machine', to: 'on' });
    bench.run(20);
    const kept = bench.plant.snapshot();
    bench.run(20);
    const hash = bench.plant.stateHash();
    bench.give({ do: 'detach', device: 'recovery-machine' });
    bench.run(5);
    bench.plant.restore(kept);
    bench.run(20);
    expect(bench.plant.stateHash()).toBe(hash);
  });
});
