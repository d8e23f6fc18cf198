/**
 * An expansion valve that does not open: its needle rises by no more than a part of its stroke, at worst not at all, and
 * only the bleed notch is left. Readings go one way with severity but subcooling, cycling and discharge temperature, which
 * rise and fall again as hardly anything flows. Signs: textbook of air-conditioning service.
 */
import type { Fault } from './fault';

export const txvStuckClosed: Fault = {
  id: 'txv-stuck-closed',
  applies: ({ metering }) => metering.kind === 'expansion-valve',
  needs: 'expansion-valve',
  quantity: { name: 'mostLift', unit: '1', at: mostLift },
  parameters: (severity) => ({ valveMostLift: mostLift(severity) }),
  clearedBy: ['txv'],
  excludes: ['txv-stuck-open'],
  signs: {
    severity: 0.6,
    'orifice-tube': {},
    'expansion-valve': { low: 'down', high: 'down', vent: 'up', superheat: 'up', subcooling: 'either' },
  },
};

function mostLift(severity: number): number {
  return (1 - severity) * (1 - severity);
}
