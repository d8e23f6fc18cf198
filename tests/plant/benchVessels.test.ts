import { describe, expect, it } from 'vitest';
import { CAN_VALVE_CDA_M2 } from '../../src/equipment/cans';
import { hoseSpecs } from '../../src/equipment/hoses';
import { createNetwork } from '../../src/loop/createNetwork';
import { addCan, addHose } from '../../src/plant/benchVessels';
import { joinToRoom, joinVessels } from '../../src/plant/links';
import { refrigerant } from '../../src/refrigerant/fluids';

const DAY = { pressurePa: 101_325, temperatureK: 305.15 };
const CAN = { id: 'can-1', netKg: 0.34, printedTotalKg: 0.37, tareKg: 0.1 };

function bench() {
  const network = createNetwork(refrigerant('R-134a'));
  network.setRoom(DAY.pressurePa, DAY.temperatureK);
  const hose = addHose(network, hoseSpecs.charging, DAY);
  const can = addCan(network, CAN, DAY);
  return { network, hose, can };
}

describe('a can on a hose', () => {
  it('stands at saturation for the day, and the hose at the pressure of the day', () => {
    const { network, hose, can } = bench();
    for (let i = 0; i < 500; i++) network.step(0.02);
    const saturated = refrigerant('R-134a').saturationPressurePa(DAY.temperatureK);
    expect(network.pressurePa(can) / saturated).toBeCloseTo(1, 2);
    expect(network.pressurePa(hose) / DAY.pressurePa).toBeCloseTo(1, 2);
  });

  it('fills the hose when its valve opens, and what left the can is in the hose', () => {
    const { network, hose, can } = bench();
    const top = { vessel: can, cell: 0, height: 'top' } as const;
    joinVessels(network, 'can', top, { vessel: hose, cell: 0, height: 'bulk' }, CAN_VALVE_CDA_M2);
    for (let i = 0; i < 500; i++) network.step(0.02);
    expect(network.pressurePa(hose) / network.pressurePa(can)).toBeCloseTo(1, 2);
    const held = network.massKg(can, 'refrigerant') + network.massKg(hose, 'refrigerant');
    expect(held).toBeCloseTo(CAN.netKg, 9);
    expect(network.massKg(hose, 'refrigerant')).toBeGreaterThan(1e-4);
  });

  it('empties to the room through an open hose end, colder the faster it goes', () => {
    const { network, hose, can } = bench();
    const top = { vessel: can, cell: 0, height: 'top' } as const;
    joinVessels(network, 'can', top, { vessel: hose, cell: 0, height: 'bulk' }, CAN_VALVE_CDA_M2);
    joinToRoom(network, 'end', hose, 8e-6);
    for (let i = 0; i < 3000; i++) network.step(0.02);
    expect(network.temperatureK(can, 0)).toBeLessThan(DAY.temperatureK - 15);
    const books = network.books();
    expect(books.massErrorRelative).toBeLessThan(1e-12);
    expect(books.ventedKg.refrigerant).toBeGreaterThan(0.05);
  });
});
