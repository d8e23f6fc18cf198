/**
 * A cracked reed, or a valve plate's gasket blown through: hot gas goes back from the discharge to the suction and is
 * compressed again. The quantity is the flow at 1 MPa across, up to 20 g/s, two thirds of what the compressor moves [guess].
 * After a stop the sides of a car with an expansion valve come level within two minutes (military manual); an orifice tube
 * does that by itself, so on that car it proves nothing. Signs: vehicle service text; sources differ on subcooling.
 * On a mild day, when a sound car cycles, a slightly leaking one runs on and its head builds before it falls.
 */
import type { Fault } from './fault';

const MOST_KG_PER_S = 0.02;
const ACROSS_PA = 1e6;

const flowAt = (severity: number): number => MOST_KG_PER_S * severity;

export const leakingReed: Fault = {
  id: 'leaking-reed',
  applies: () => true,
  quantity: { name: 'reedLeakFlow', unit: 'kg/s', at: flowAt },
  parameters: (severity) => ({ reedLeakKgPerSPa: flowAt(severity) / ACROSS_PA }),
  clearedBy: ['compressor'],
  excludes: [],
  signs: {
    severity: 0.8,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up', subcooling: 'either' },
    'expansion-valve': { low: 'up', high: 'down', vent: 'up', subcooling: 'either' },
  },
};
