/** What the place and the wrong deed do, as numbers: fumes, gas, flame, cold, heat, volts, and what a snapshot keeps of it. */
import { describe, expect, it } from 'vitest';
import type { PlaceKind } from '../../src/equipment/place';
import type { PlantOptions } from '../../src/plant/buildPlant';
import { type ServiceBench, serviceBench } from '../support/serviceBench';

const CAN = { id: 'can-1', netKg: 0.34, printedTotalKg: 0.369, tareKg: 0.11 };
const place = (kind: PlaceKind, volumeM3 = 60, tight = false) => ({ place: { kind, volumeM3, tight } });
const at = (over: Partial<PlantOptions>): ServiceBench => serviceBench('hatchback', 22, over);
const withCan: Partial<PlantOptions> = {
  bench: { hoses: ['charging', 'gauge-set'], cans: [CAN], tools: ['recovery-machine', 'sealer-test'] },
};
/** Joint undone under pressure and done up again. */
function letOut({ give, run }: ServiceBench, seconds: number): void {
  give({ do: 'open-loop', part: 'suction' });
  run(seconds);
  give({ do: 'close-loop', part: 'suction' });
}

describe('carbon monoxide', () => {
  const ppmAfter = (over: Partial<PlantOptions>, open: boolean, seconds = 60): number => {
    const { give, run, value } = at(over);
    give({ do: 'engine', rpm: 1500 }, ...(open ? [{ do: 'door', to: 'open' } as const] : []));
    run(seconds);
    return value('place.coPpm');
  };

  it('is twice as much in half the room, where the room is shut tight', () => {
    const whole = ppmAfter(place('garage', 60, true), false);
    expect(ppmAfter(place('garage', 30, true), false) / whole).toBeCloseTo(2, 9);
    // 71 g/h at 800 rpm, a minute at 1,500, 1.145 kg/m3, 60 m3
    expect(whole).toBeCloseTo((1e6 * ((0.071 / 60) * (1500 / 800))) / 1.145 / 60, 6);
  });

  it('is less where air gets in, stays under the day limit with the door open, and is none outdoors', () => {
    const shut = ppmAfter(place('garage'), false);
    expect(shut).toBeLessThan(ppmAfter(place('garage', 60, true), false));
    expect(ppmAfter(place('garage'), true, 240)).toBeLessThan(35);
    expect(ppmAfter(place('outdoors'), false)).toBeLessThan(2);
  });

  it('is told at each limit as it is passed, and once', () => {
    const { give, run } = at(place('garage', 10, true));
    give({ do: 'engine', rpm: 3000 });
    const told = run(80).filter((id) => id.startsWith('co-over'));
    expect(told).toEqual(['co-over:35', 'co-over:200']);
  });
});

describe('refrigerant that is let out', () => {
  it('runs down into a pit and lies there, and takes the place of the oxygen', () => {
    const bench = at(place('garage-with-pit'));
    letOut(bench, 2);
    bench.run(2);
    const kg = bench.value('vented.kg');
    const ppm = bench.value('pit.gasPpm');
    expect(ppm / ((1e6 * 0.7 * (kg / 0.102032) * 0.024465) / 6)).toBeGreaterThan(0.99);
    expect(bench.value('breathed.gasPpm')).toBe(bench.value('place.gasPpm'));
    bench.give({ do: 'pit', to: 'in' });
    expect(bench.value('breathed.gasPpm')).toBe(ppm);
    expect(bench.value('breathed.oxygenShare')).toBeCloseTo(0.209 * (1 - ppm / 1e6), 12);
    expect(bench.run(2)).toContain('gas-breathed:pit');
    bench.give({ do: 'pit', to: 'out' }, { do: 'door', to: 'open' });
    bench.run(60);
    expect(bench.value('pit.gasPpm')).toBeLessThan(0.92 * ppm);
  });

  it('is burned by a heater, and what was burned is no longer in the room', () => {
    const [lit, out] = [true, false].map((heaterOn) => {
      const bench = at({ ...place('garage'), heaterOn });
      letOut(bench, 1);
      bench.run(40);
      return bench;
    });
    const burnedKg = 1e-6 * lit.value('decomposed.milligrams');
    expect(burnedKg).toBeGreaterThan(1e-4);
    expect(out.value('decomposed.milligrams')).toBe(0);
    const missingKg = ((out.value('place.gasPpm') - lit.value('place.gasPpm')) * 60 * 0.102032) / 0.024465e6;
    expect(missingKg / burnedKg).toBeCloseTo(1, 2);
  });

  it('freezes bare skin and an open eye by the liquid in it, and gear keeps it off', () => {
    const bare = at({});
    const events = bare.give({ do: 'open-loop', part: 'liquid' });
    expect(events).toEqual(expect.arrayContaining(['cold-on-skin', 'cold-in-eye']));
    expect(bare.value('contact.skinKg')).toBeGreaterThan(bare.value('contact.eyeKg'));
    expect(bare.value('contact.temperatureK')).toBeCloseTo(247.08, 2);
    const dressed = at({});
    dressed.give({ do: 'wear', item: 'goggles' }, { do: 'wear', item: 'gloves' });
    expect(dressed.give({ do: 'open-loop', part: 'liquid' })).not.toContain('cold-on-skin');
    expect(dressed.value('contact.skinKg')).toBe(0);
  });
});

describe('gas that burns', () => {
  it('catches fire at a heater when enough of it is round the car, and R-134a does not', () => {
    const leak = (vehicleId: string, refrigerant: 'R-134a' | 'R-1234yf'): string[] => {
      const bench = serviceBench(vehicleId, 22, {
        ...place('garage'),
        heaterOn: true,
        refrigerant,
        chargeKg: 0.45,
      });
      bench.give({ do: 'open-loop', part: 'suction' });
      return bench.run(20);
    };
    expect(leak('compact', 'R-1234yf')).toContain('ignited:heater');
    expect(leak('hatchback', 'R-134a')).not.toContain('ignited:heater');
  });
});

describe('heat', () => {
  it('burns a hole into a hose that lies on the exhaust, and the hose then leaks', () => {
    const { give, run, value } = serviceBench('sedan', 22);
    const route = 'side-middle,engine-top,exhaust,engine-top,side-middle,fender,mat';
    give(
      { do: 'cap', port: 'port-a', to: 'off' },
      { do: 'couple', hose: 'gauge-low', port: 'port-a', route },
    );
    give({ do: 'coupler', hose: 'gauge-low', to: 'open' }, { do: 'engine', rpm: 900 });
    const events = run(160);
    expect(events).toContain('hose-on-hot:gauge-low');
    expect(events).toContain('hose-burned:gauge-low');
    expect(value('manifold.temperatureK')).toBeGreaterThan(408);
    expect(value('vented.kg')).toBeGreaterThan(0);
  });

  it('drives a can over what makers allow in hot water, and never in the bowl that is kept at 40 °C', () => {
    const inWater = (water: 'bath' | 'hot-water'): string[] => {
      const { give, run } = at(withCan);
      give({ do: 'place', can: 'can-1', at: water });
      return run(140);
    };
    expect(inWater('hot-water')).toContain('can-overheated:can-1');
    expect(inWater('bath')).not.toContain('can-overheated:can-1');
  });
});

describe('a wire across a switch', () => {
  it('lets a compressor run that its low switch has stopped, and is told when it does', () => {
    const start = (bridged: boolean): { events: string[]; turns: number } => {
      const { give, run, value } = serviceBench('sedan', 22, { chargeKg: 0.05 });
      if (bridged) give({ do: 'bypass', what: 'low-switch', to: 'on' });
      give({ do: 'engine', rpm: 1500 }, { do: 'blower', speed: 4 }, { do: 'ac', to: 'on' });
      const events = run(20);
      return { events, turns: value('compressor.revPerS') };
    };
    expect(start(false).turns).toBe(0);
    const bridged = start(true);
    expect(bridged.events).toContain('ran-bridged:low-switch');
    expect(bridged.turns).toBeGreaterThan(0);
  });
});

describe('the high-voltage circuit', () => {
  it('stands at its volts, runs down once the plug is out, and stops the compressor at once', () => {
    const { give, run, value } = serviceBench('electric', 30, { refrigerant: 'R-1234yf', chargeKg: 0.53 });
    expect(value('highVoltage.volts')).toBe(350);
    give({ do: 'blower', speed: 4 }, { do: 'ac', to: 'on' });
    run(20);
    expect(value('compressor.revPerS')).toBeGreaterThan(0);
    give({ do: 'isolate', to: 'on' });
    run(30);
    expect(value('compressor.revPerS')).toBe(0);
    expect(value('highVoltage.volts')).toBeCloseTo(350 * 0.818730753, 5);
    expect(at({}).value('highVoltage.volts')).toBe(0);
    expect(at({}).plant.apply({ do: 'isolate', to: 'on' })).toMatchObject({
      reason: 'refusal.noHighVoltage',
    });
  });
});

describe('sealer in a car', () => {
  it('is told by its test, and sets hard in a recovery machine', () => {
    const bench = at({ ...withCan, foundSealerKg: 0.02 });
    bench.give({ do: 'cap', port: 'port-b', to: 'off' }, { do: 'test-sealer', port: 'port-b' });
    expect(bench.value('sealerTest.found')).toBeNaN();
    bench.run(181);
    expect(bench.value('sealerTest.found')).toBe(1);
    bench.give({ do: 'cap', port: 'port-b', to: 'on' });
    bench.couple();
    bench.give(
      { do: 'attach', device: 'recovery-machine', onto: 'utility' },
      { do: 'run', device: 'recovery-machine', to: 'on' },
    );
    expect(bench.run(60)).toContain('machine-fouled');
    expect(bench.plant.apply({ do: 'run', device: 'recovery-machine', to: 'on' })).toMatchObject({
      reason: 'refusal.machineFouled',
    });
  });
});

describe('a clutch that stands', () => {
  it('is told when somebody goes on feeding it', () => {
    const { give, run } = at({
      ...withCan,
      faults: [{ id: 'clutch-not-engaging', severity: 1, onsetStep: 0 }],
    });
    give(
      { do: 'cap', port: 'port-b', to: 'off' },
      { do: 'couple', hose: 'charging', port: 'port-b', route: '' },
      { do: 'tap', can: 'can-1', onto: 'charging' },
      { do: 'coupler', hose: 'charging', to: 'open' },
      { do: 'engine', rpm: 1500 },
      { do: 'blower', speed: 4 },
      { do: 'ac', to: 'on' },
      { do: 'tilt', can: 'can-1', degrees: 180 },
      { do: 'place', can: 'can-1', at: 'bath' },
      { do: 'can-valve', can: 'can-1', turn: 16 },
    );
    expect(run(90)).toContain('fed-standing');
  });
});

it('keeps all of it in a snapshot: what comes after is the same to the bit', () => {
  const { give, run, plant } = at({ ...withCan, ...place('garage-with-pit'), heaterOn: true });
  give({ do: 'engine', rpm: 1000 }, { do: 'pit', to: 'in' }, { do: 'bypass', what: 'high-switch', to: 'on' });
  give({ do: 'place', can: 'can-1', at: 'hot-water' }, { do: 'purge', hose: 'charging', to: 'open' });
  run(20);
  const kept = plant.snapshot();
  const once = [run(10), plant.stateHash()];
  plant.restore(kept);
  expect([run(10), plant.stateHash()]).toEqual(once);
});
