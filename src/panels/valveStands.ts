/** How far a hand valve or a can's valve is open, as it is said of one: shut, a fraction of a turn, a whole turn. */
import { word } from '../words/words';

const SIXTEENTHS = 16;

export function valveStands(sixteenths: number): string {
  if (sixteenths <= 0 || Number.isNaN(sixteenths)) return word('panels.manifold.shut');
  if (sixteenths >= SIXTEENTHS) return word('panels.manifold.open');
  let [part, whole] = [sixteenths, SIXTEENTHS];
  while (part % 2 === 0) [part, whole] = [part / 2, whole / 2];
  return word('panels.manifold.value', { turn: `${part}/${whole}` });
}
