/**
 * Too much oil: up to two and a half times what belongs in the loop, as after a new compressor filled on top of the old
 * oil and a few oil-charged cans. It lies on the walls of condenser and coil. Sources differ on every sign.
 */
import { eitherWay } from './eitherWay';
import type { Fault } from './fault';

const MOST_OVER = 1.5;

export const tooMuchOil: Fault = {
  id: 'too-much-oil',
  applies: () => true,
  quantity: { name: 'oilShare', unit: '1', at: (severity) => 1 + MOST_OVER * severity },
  contents: (filling, severity, { compressor }) => ({
    ...filling,
    extraOilKg: filling.extraOilKg + MOST_OVER * severity * compressor.oil,
  }),
  clearedBy: [],
  excludes: ['too-little-oil'],
  signs: eitherWay(0.7),
};
