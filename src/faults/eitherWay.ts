/** Signs of a fault on which sources differ in everything: nobody may be scored on any of them. */
import type { Fault } from './fault';

const ANYTHING = {
  low: 'either',
  high: 'either',
  vent: 'either',
  superheat: 'either',
  subcooling: 'either',
} as const;

export const eitherWay = (severity: number): Fault['signs'] => ({
  severity,
  'orifice-tube': ANYTHING,
  'expansion-valve': ANYTHING,
});
