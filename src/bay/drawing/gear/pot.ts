/** A pot that can be coated: an upright cylinder seen from above. */
import { mm } from '../record';

/** An upright pot: its outline, radius and height. */
export interface Pot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly r: number;
  readonly lip: number;
}

export const potOutline = ({ x, y, r, lip }: Pot): string =>
  `M${mm(x - r)} ${mm(y)}A${r} ${r} 0 0 1 ${mm(x + r)} ${mm(y)}V${mm(y + lip)}A${r} ${r} 0 0 1 ${mm(x - r)} ${mm(y + lip)}Z`;
