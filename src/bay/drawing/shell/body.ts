/** Painted frame round the opening: fenders that roll over to both sides, gutter with its seal, screws. */
import type { Shell } from '../../../layout/layout';
import { move } from '../matrix';
import { FENDER_LEFT, FENDER_RIGHT, PANEL } from '../paints';
import { type Drawing, fill, mm, repeat, stroke } from '../record';
import { bolt } from '../solids';

/** How far the world is drawn past the frame, so that another shape of window shows more car and never a bar. */
export const PAST = 400;

export function body(shell: Shell): Drawing {
  const { left, right, firewall, nose, lower, round } = shell;
  const width = left + right;
  const opening =
    `M${left + 30} ${firewall - 34}H${right - 30}Q${right} ${firewall - 30} ${right + 2} ${firewall}V${mm(nose - round * 0.6)}` +
    `Q${right} ${nose} ${right - round} ${nose + 6}H${left + round}Q${left} ${nose} ${left - 2} ${mm(nose - round * 0.6)}V${firewall}` +
    `Q${left} ${firewall - 30} ${left + 30} ${firewall - 34}Z`;
  const frame = `M${-PAST} ${-PAST}H${width + PAST}V${lower + PAST}H${-PAST}Z${opening}`;
  const fenderLeft = `M${-PAST / 2} ${-PAST}H${left - 6}V${lower + 40}Q${left - 40} ${lower + 90} ${-PAST / 2} ${lower + 120}Z`;
  const fenderRight = `M${width + PAST / 2} ${-PAST}H${right + 6}V${lower + 40}Q${right + 40} ${lower + 90} ${width + PAST / 2} ${lower + 120}Z`;
  return [
    fill(
      `M${left - 2} ${firewall}V${mm(nose - round * 0.9)}L${left + 30} ${mm(nose - round * 0.9 - 40)}V${firewall + 6}Z`,
      'shadow',
      0.2,
    ),
    { ...fill(frame, PANEL), evenOdd: true },
    fill(fenderLeft, FENDER_LEFT),
    fill(fenderRight, FENDER_RIGHT),
    stroke(opening, 'paint-d', 20, 0.55),
    stroke(opening, 'paint-c', 15),
    { ...stroke(opening, 'paint-a', 3, 0.8), matrix: move(-3, -3) },
    stroke(opening, 'rub-d', 5),
    ...repeat(4, (i) => {
      const y = firewall + 90 + (i * (nose - firewall - 180)) / 3;
      return [...bolt(left - 26, y, 8, 'paint'), ...bolt(right + 26, y, 8, 'paint')];
    }),
  ];
}
