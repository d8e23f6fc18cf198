/** An R-12 car: someone licensed takes its refrigerant out; fittings, oil, seals, cut-out and label of a conversion. */
import { describe, expect, it } from 'vitest';
import type { PlantOptions } from '../../src/plant/buildPlant';
import type { Command } from '../../src/plant/commandSpecs';
import { type ServiceBench, serviceBench } from '../support/serviceBench';

const bench = (over: Partial<PlantOptions> = {}): ServiceBench =>
  serviceBench('pickup', 25, {
    refrigerant: 'R-12',
    bench: { hoses: ['gauge-set'], cans: [], tools: ['conversion-kit'], refrigerant: 'R-134a' },
    ...over,
  });
const refused = ({ plant }: ServiceBench, command: Command): string | null => {
  const outcome = plant.apply(command);
  return outcome.ok ? null : outcome.reason;
};
const ports = ['port-a', 'port-b'] as const;
const TWENTY_MINUTES_S = 1200;

describe('a recovery by someone licensed', () => {
  const car = bench();
  const before = car.value('conversion.oldKg');

  it('keeps everybody else off the car, but not from looking', () => {
    expect(before).toBeCloseTo(1.1, 3);
    expect(car.give({ do: 'arrange', what: 'recovery' })).toEqual(['recovery-arranged']);
    expect(refused(car, { do: 'cap', port: 'port-a', to: 'off' })).toBe('refusal.licensedAtWork');
    expect(refused(car, { do: 'engine', rpm: 1000 })).toBe('refusal.licensedAtWork');
    expect(refused(car, { do: 'look', at: 'accumulator' })).toBeNull();
  });

  it('takes out all but a rest in twenty minutes, vents nothing, and every gram is booked', () => {
    const snapshot = car.plant.snapshot();
    car.run(TWENTY_MINUTES_S - 1);
    expect(car.run(2)).toContain('licensed-recovered');
    const [leftKg, takenKg] = [car.value('conversion.oldKg'), car.value('recovery.licensedKg')];
    expect(leftKg).toBeLessThan(0.03 * before);
    expect(takenKg).toBeCloseTo(before - leftKg, 6);
    expect(car.value('vented.kg')).toBe(0);
    expect(car.plant.books().massErrorRelative).toBeLessThan(1e-12);
    expect(car.plant.books().energyErrorRelative).toBeLessThan(1e-10);
    expect(refused(car, { do: 'cap', port: 'port-a', to: 'off' })).toBeNull();
    // and the middle of it can be gone back to
    const hash = car.plant.stateHash();
    car.plant.restore(snapshot);
    car.run(TWENTY_MINUTES_S + 1);
    car.give({ do: 'cap', port: 'port-a', to: 'off' });
    expect(car.plant.stateHash()).toBe(hash);
  });
});

describe('the steps of a conversion', () => {
  it('put no fitting on a port with pressure behind it, nor on a car that nobody converts', () => {
    const car = bench();
    expect(refused(car, { do: 'convert-port', port: 'port-a' })).toBe('refusal.capOn');
    car.give({ do: 'cap', port: 'port-a', to: 'off' });
    expect(refused(car, { do: 'convert-port', port: 'port-a' })).toBe('refusal.portHolds');
    const other = serviceBench('sedan', 25, { start: 'evacuated', chargeKg: 0 });
    expect(refused(other, { do: 'convert-port', port: 'port-a' })).toBe('refusal.noConversion');
  });

  it('lock fittings on that take the new hoses, and what is due follows', () => {
    const car = bench({ start: 'evacuated', chargeKg: 0 });
    const couple: Command = { do: 'couple', hose: 'gauge-low', port: 'port-a', route: '' };
    for (const port of ports) car.give({ do: 'cap', port, to: 'off' });
    expect(refused(car, couple)).toMatch(/refusal\.fit\./);
    expect(car.value('label.massKg')).toBe(1.1);
    expect(car.value('conversion.oldPortsCount')).toBe(2);
    car.give({ do: 'convert-port', port: 'port-a' });
    expect(car.value('conversion.fittings')).toBe(0);
    expect(car.value('label.massKg')).toBe(0.935);
    expect(refused(car, couple)).toBeNull();
    car.give({ do: 'disable-port', port: 'port-b' });
    expect(car.value('conversion.oldPortsCount')).toBe(0);
    // without a high port it is not fitted for the new refrigerant
    expect(car.value('conversion.fittings')).toBe(0);
    const high: Command = { do: 'couple', hose: 'gauge-high', port: 'port-b', route: '' };
    expect(refused(car, high)).toBe('refusal.portDisabled');
    expect(refused(car, { do: 'convert-port', port: 'port-b' })).toBe('refusal.portDisabled');
  });

  it('leave a port that was put out of use to no tool', () => {
    const tools = ['conversion-kit', 'identifier', 'sealer-test', 'dye'] as const;
    const car = bench({
      start: 'evacuated',
      chargeKg: 0,
      bench: { hoses: ['gauge-set'], cans: [], tools, refrigerant: 'R-134a' },
    });
    const port = 'port-a';
    const deeds: readonly Command[] = [
      { do: 'identify', port },
      { do: 'test-sealer', port },
      { do: 'inject-dye', mL: 5 },
    ];
    car.give({ do: 'cap', port, to: 'off' }, { do: 'disable-port', port });
    expect(deeds.map((deed) => refused(car, deed))).toEqual(deeds.map(() => 'refusal.portDisabled'));
  });

  it('change the oil by kind: out with compressor and accumulator, in where the loop stands open', () => {
    const car = bench({ start: 'evacuated', chargeKg: 0 });
    const fill: Command = { do: 'fill-oil', kind: 'POE', mL: 240 };
    expect(refused(car, fill)).toBe('refusal.loopNotOpen');
    for (const port of ports) car.give({ do: 'cap', port, to: 'off' }, { do: 'convert-port', port });
    expect(car.value('oil.wrongRatio')).toBeCloseTo(1, 6);
    car.give({ do: 'open-loop', part: 'compressor' }, { do: 'open-loop', part: 'accumulator' });
    expect(refused(car, fill)).toBe('refusal.loopDraws');
    car.run(60);
    car.give({ do: 'replace', part: 'compressor' }, { do: 'replace', part: 'accumulator' });
    // the old oil runs out of the lines before the new goes in
    car.give({ do: 'renew-seals' }, fill, { do: 'fit-cut-out' });
    expect(car.value('oil.poeKg')).toBeCloseTo(0.2352, 4);
    expect(car.value('oil.wrongRatio')).toBeLessThan(0.1);
    expect(Math.abs(car.value('oil.inLoopKg') - car.value('oil.dueKg'))).toBeLessThan(0.035);
    for (const step of ['fittings', 'drier', 'seals', 'cutOut'])
      expect(car.value(`conversion.${step}`), step).toBe(1);
    expect(car.plant.books().massErrorRelative).toBeLessThan(1e-12);
    // mineral oil put in by mistake is as wrong as oil left in
    car.give({ do: 'fill-oil', kind: 'mineral', mL: 240 });
    expect(car.value('oil.wrongRatio')).toBeGreaterThan(0.4);
  });

  it('have lines of old and new label that are right or wrong', () => {
    const car = bench({ start: 'evacuated', chargeKg: 0, found: { converted: true } });
    car.give({ do: 'note-old', grams: 1100, mL: 240 });
    expect(car.value('conversion.oldWrongCount')).toBe(0);
    car.give({ do: 'note-old', grams: 935, mL: 120 });
    expect(car.value('conversion.oldWrongCount')).toBe(2);
    const label = { do: 'label-conversion', refrigerant: 'R-134a', oil: 'POE' } as const;
    // nothing is in it yet, and a compressor of 220 g of oil
    car.give({ ...label, grams: 0, mL: 225 });
    expect(car.value('conversion.labelWrongCount')).toBe(0);
    car.give({ ...label, refrigerant: 'R-12', oil: 'mineral', grams: 935, mL: 100 });
    expect(car.value('conversion.labelWrongCount')).toBe(4);
  });
});

describe('a high-pressure cut-out', () => {
  it('stops a compressor that goes on without one until the relief valve opens', () => {
    const happened = (fitted: boolean): string[] => {
      const car = serviceBench('pickup', 43, {
        refrigerant: 'R-12',
        chargeKg: 1.6,
        faults: [{ id: 'condenser-air-blocked', severity: 1, onsetStep: 0 }],
        bench: { hoses: [], cans: [], tools: ['conversion-kit'] },
      });
      if (fitted) car.give({ do: 'fit-cut-out' });
      car.give({ do: 'blower', speed: 4 }, { do: 'engine', rpm: 3000 }, { do: 'ac', to: 'on' });
      const told = car.run(90);
      return ['high-pressure-trip', 'relief-opened'].filter((id) => told.includes(id));
    };
    expect(happened(false)).toEqual(['relief-opened']);
    expect(happened(true)).toEqual(['high-pressure-trip']);
  });
});
