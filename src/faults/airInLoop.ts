/**
 * Air in the loop: 0 to 8 g, the range of practice; 4 g is what a loop full of air keeps that was charged without having
 * been evacuated. It stands in the gas with a pressure of its own, gathers on the high side and lies before the condenser's
 * wall. Waiting does not cure it. Signs: bus and sports car service texts; subcooling reckoned from a gauge is up, the true
 * one is not.
 */
import type { Fault } from './fault';

const MOST_KG = 0.008;

export const airInLoop: Fault = {
  id: 'air-in-loop',
  applies: () => true,
  quantity: { name: 'airMass', unit: 'kg', at: (severity) => MOST_KG * severity },
  contents: (filling, severity) => ({ ...filling, airKg: filling.airKg + MOST_KG * severity }),
  clearedBy: [],
  excludes: [],
  signs: {
    severity: 0.75,
    'orifice-tube': { low: 'either', high: 'up', vent: 'either', superheat: 'same', subcooling: 'either' },
    'expansion-valve': { low: 'either', high: 'up', vent: 'up', superheat: 'same', subcooling: 'either' },
  },
};
