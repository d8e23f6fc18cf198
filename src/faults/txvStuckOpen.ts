/**
 * An expansion valve that does not shut: its needle stays up by some part of its stroke, and the seat is washed out by
 * up to three tenths of its area [guess]. Liquid comes out of the coil. Texts print a higher high side, the physics of a
 * flooded coil gives a lower one: not to be scored. Signs: bus and sports car service texts, textbook of air-conditioning
 * service. Readings go one way with severity but the high side, which rises until the coil is full of liquid, then falls.
 */
import type { Fault } from './fault';

const MOST_WASHED = 0.3;

export const txvStuckOpen: Fault = {
  id: 'txv-stuck-open',
  applies: ({ metering }) => metering.kind === 'expansion-valve',
  needs: 'expansion-valve',
  quantity: { name: 'leastLift', unit: '1', at: leastLift },
  parameters: (severity) => ({
    valveLeastLift: leastLift(severity),
    meteringArea: 1 + MOST_WASHED * severity,
  }),
  clearedBy: ['txv'],
  excludes: ['txv-stuck-closed'],
  signs: {
    severity: 0.6,
    'orifice-tube': {},
    'expansion-valve': { low: 'up', high: 'either', vent: 'either', superheat: 'down', subcooling: 'either' },
  },
};

function leastLift(severity: number): number {
  return severity * (2 - severity);
}
