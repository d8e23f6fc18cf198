/**
 * Numbered pins in one row over a plot: each as near its own moment as the others allow, in order, none over another.
 * Where there are more than fit, they share the width evenly.
 */
const PIN_ROOM = 21;

export function spreadPins(wanted: readonly number[], left: number, right: number): number[] {
  const room = Math.min(PIN_ROOM, wanted.length > 1 ? (right - left) / (wanted.length - 1) : PIN_ROOM);
  const x = [...wanted];
  for (let i = 1; i < x.length; i++) x[i] = Math.max(x[i], x[i - 1] + room);
  const over = x.length > 0 ? x[x.length - 1] - right : 0;
  if (over > 0) x[x.length - 1] = right;
  for (let i = x.length - 2; i >= 0; i--) x[i] = Math.min(x[i], x[i + 1] - room);
  return x.map((at) => Math.round(at * 10) / 10);
}
