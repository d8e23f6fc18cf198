/** Which hose leads to the can that is drawn: the one it is on, else the first whose end lies free; null where none does. */
import type { BayFrame, CanInlet } from '../bayFrame';

export function leadingEnd({ can, ends, hoses }: BayFrame): CanInlet | null {
  if (can?.onto) return can.onto;
  const hasUtility = hoses.some(({ id }) => id === 'utility');
  if (can?.mounted) return hasUtility ? 'utility' : 'charging';
  const free = ends ?? (hasUtility ? ['utility'] : []);
  return free.includes('utility') ? 'utility' : (free[0] ?? null);
}
