import { describe, expect, it } from 'vitest';
import figures from '../reference/service/recovery.json';
import { type ServiceBench, serviceBench } from '../support/serviceBench';

const MACHINE = 'recovery-machine';

function recovering(vehicleId: string, degC: number, over = {}): ServiceBench {
  const bench = serviceBench(vehicleId, degC, over);
  bench.couple();
  bench.give({ do: 'attach', device: MACHINE, onto: 'utility' }, { do: 'run', device: MACHINE, to: 'on' });
  return bench;
}

/** Until the machine has switched itself off; seconds. */
function untilItStops(bench: ServiceBench, mostS = 1500): number {
  for (let s = 0; s < mostS; s += 5) {
    if (bench.value(`device.${MACHINE}.running`) === 0) return s;
    bench.run(5);
  }
  return Number.POSITIVE_INFINITY;
}

describe('a recovery machine', () => {
  it.each(['hatchback', 'sedan'])(
    'takes nineteen twentieths out of a sound %s in half an hour',
    (vehicle) => {
      const bench = recovering(vehicle, 22);
      const { value, plant, run, give } = bench;
      const [chargeKg, tankKg] = [value('loop.massKg'), value('recoveryTank.netKg')];
      const events = run(60);
      const first = chargeKg - value('loop.massKg');
      let seconds = 60 + untilItStops(bench);
      expect(events.concat(run(1))).not.toContain('tank-filled');
      // the rate fell to a tenth of what it was long before the end
      expect(first / 60).toBeGreaterThan(0.0015);
      expect((chargeKg - value('loop.massKg')) / seconds).toBeLessThan(0.7 * (first / 60));
      // cold oil and wetted walls give up more gas, so it comes up again
      const stoppedPa = value('lowSide.pressurePa');
      expect(stoppedPa).toBeLessThan(60_000);
      run(240);
      expect(value('lowSide.pressurePa')).toBeGreaterThan(1.4 * stoppedPa);
      give({ do: 'run', device: MACHINE, to: 'on' });
      seconds += 240 + untilItStops(bench);
      expect(seconds).toBeLessThan(60 * figures.minutes);
      const out = chargeKg - value('loop.massKg');
      expect(out / chargeKg).toBeGreaterThan(figures.least_share_recovered);
      // what came out stands on the scale, but for what hoses and the machine's pot hold
      expect(Math.abs(value('recoveryTank.netKg') - tankKg - out)).toBeLessThan(0.003);
      expect(Math.abs(value('recoveryScale.massKg') - 6.4 - value('recoveryTank.netKg'))).toBeLessThan(0.01);
      expect(value('drainedOil.volumeM3')).toBeCloseTo(value('separator.oilKg') / 990, 5);
      expect(plant.books().massErrorRelative).toBeLessThan(1e-12);
      expect(plant.books().ventedKg).toBe(0);
    },
  );

  it('leaves more behind in the cold, where oil holds gas back', () => {
    const left = (degC: number): number => {
      const bench = recovering('hatchback', degC);
      const chargeKg = bench.value('loop.massKg');
      untilItStops(bench);
      return bench.value('loop.massKg') / chargeKg;
    };
    expect(left(5)).toBeGreaterThan(1.05 * left(22));
  });

  it('switches itself off when its tank is four fifths full, and does not start again', () => {
    const bench = recovering('hatchback', 22);
    const { network } = bench.parts.car;
    const tank = bench.parts.toolVessels.recoveryTank;
    const share = (): number => network.liquidShare(tank, 0);
    const warmK = 318.15;
    const other = network.addVessel(
      {
        id: 'another tank',
        cells: [
          {
            id: 'body',
            kind: 'pot',
            volumeM3: 0.02,
            wallHeatCapacityJPerK: 4000,
            insideWPerK: [200, 20, 200],
            outsideWPerK: 0,
            outletHeight: 0,
          },
        ],
      },
      { temperatureK: warmK, refrigerantKg: 18 },
    );
    const [from, to] = [other, tank].map((vessel) => ({ vessel, cell: 0, height: 'bottom' as const }));
    network.addLink({ kind: 'valve', id: 'filling', from, to, areaM2: 5e-5, opening: 1 });
    const events: string[] = [];
    for (let s = 0; s < 600 && bench.value(`device.${MACHINE}.running`) === 1; s++)
      events.push(...bench.run(1));
    expect(share()).toBeGreaterThan(0.8);
    expect(share()).toBeLessThan(0.82);
    expect(events.filter((id) => !id.startsWith('refrigerant'))).toEqual([
      'tank-filled',
      `device-stopped:${MACHINE}`,
    ]);
    const again = bench.plant.apply({ do: 'run', device: MACHINE, to: 'on' });
    expect(again).toMatchObject({ ok: false, reason: 'refusal.tankFull' });
    expect(bench.value('recoveryTank.full')).toBe(1);
  });

  it('takes air and foreign gas along and tells that its tank is contaminated', () => {
    const faults = [
      { id: 'air-in-loop', severity: 0.8, onsetStep: 0 },
      { id: 'mixed-refrigerant', severity: 0.5, onsetStep: 0 },
    ];
    const bench = recovering('hatchback', 22, { faults });
    const events = bench.run(400);
    expect(events.filter((id) => id.startsWith('tank-contaminated')).sort()).toEqual([
      'tank-contaminated:air',
      'tank-contaminated:foreign',
    ]);
    expect(bench.value('recoveryTank.airKg')).toBeGreaterThan(0.003);
    expect(bench.value('recoveryTank.foreignKg')).toBeGreaterThan(0.03);
  });
});
