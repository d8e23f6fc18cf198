/**
 * Behind the firewall: windscreen, the open hood standing up with its underside toward the reader (stamped frame,
 * quilted pad, clips), hinges, and the slotted cowl.
 */
import type { Shell } from '../../../layout/layout';
import { move } from '../matrix';
import { across, dome, front, GLASS, HOOD_UNDERSIDE, lit } from '../paints';
import { circle, roundRect } from '../paths';
import { type Drawing, fill, mm, repeat, shape, stroke } from '../record';
import { bolt } from '../solids';
import { PAST } from './body';

const TOP = -420;

export function cowl(shell: Shell): Drawing {
  const { left, right, firewall } = shell;
  const seal = firewall - 34;
  const hinge = firewall - 78;
  return [
    ...windscreen(left, right, hinge),
    ...hood(left, right, hinge),
    ...pad(left + 150, right - 150, hinge),
    ...slots(left, right, hinge, seal),
    ...hingeArm(left - 30, 1, hinge, seal),
    ...hingeArm(right + 30, -1, hinge, seal),
    fill(roundRect(left - 10, seal + 18, right - left + 20, 30, 0), 'shadow', 0.14),
  ];
}

function windscreen(left: number, right: number, hinge: number): Drawing {
  const width = left + right;
  const y = hinge + 2;
  return [
    fill(`M${-PAST} ${TOP}H${width + PAST}V${y}H${-PAST}Z`, GLASS),
    fill(
      `M${-PAST} ${y}H${left - 90}L${left - 150} ${TOP}H${-PAST}ZM${width + PAST} ${y}H${right + 90}L${right + 150} ${TOP}H${width + PAST}Z`,
      'paint-c',
      0.9,
    ),
    stroke(`M${left - 90} ${y}L${left - 150} ${TOP}M${right + 90} ${y}L${right + 150} ${TOP}`, 'rub-d', 9),
    stroke(`M${left - 96} ${y}L${left - 156} ${TOP}`, 'paint-h', 2.4, 0.7),
    stroke(`M${-PAST} ${y}H${left - 60}M${right + 60} ${y}H${width + PAST}`, 'paint-d', 4, 0.8),
  ];
}

function hood(left: number, right: number, hinge: number): Drawing {
  const [hl, hr, tl, tr] = [left - 44, right + 44, left - 74, right + 74];
  const outline = `M${hl} ${hinge + 2}L${tl} ${TOP}H${tr}L${hr} ${hinge + 2}Q${(left + right) / 2} ${hinge + 12} ${hl} ${hinge + 2}Z`;
  const stamped = (edge: number, s: 1 | -1): Drawing => {
    const at = (inset: number, y: number): string =>
      `${mm(edge + s * inset + s * (y - hinge) * 0.09)} ${mm(y)}`;
    const window = `M${at(40, hinge - 14)}L${at(150, hinge - 14)}L${at(116, TOP)}L${at(26, TOP)}Z`;
    return [
      { ...shape(window, 'shadow', 'paint-d', 2), fillAlpha: 0.42 },
      stroke(`M${at(40, hinge - 13)}L${at(150, hinge - 13)}`, 'paint-a', 2, 0.55),
    ];
  };
  return [
    { ...fill(outline, 'shadow', 0.5), matrix: move(10, 6) },
    fill(outline, HOOD_UNDERSIDE),
    stroke(`M${hl} ${hinge + 2}L${tl} ${TOP}M${tr} ${TOP}L${hr} ${hinge + 2}`, 'paint-d', 3),
    stroke(`M${hl + 6} ${hinge - 4}L${tl + 6} ${TOP}`, 'paint-a', 5, 0.95),
    stroke(`M${hr - 6} ${hinge - 4}L${tr - 6} ${TOP}`, 'paint-b', 4, 0.9),
    stroke(
      `M${hl + 16} ${hinge - 6}L${tl + 16} ${TOP}M${hr - 16} ${hinge - 6}L${tr - 16} ${TOP}`,
      'paint-d',
      2,
      0.6,
    ),
    ...stamped(hl, 1),
    ...stamped(hr, -1),
  ];
}

function pad(left: number, right: number, hinge: number): Drawing {
  let quilt = '';
  for (let x = left + 36; x < right - 28; x += 58) {
    for (let y = hinge - 18; y > TOP + 90; y -= 84)
      quilt += `M${x} ${y}L${x + 24} ${y - 42}L${x} ${y - 84}L${x - 24} ${y - 42}Z`;
  }
  const outline = `M${left} ${TOP}V${hinge - 26}Q${left} ${hinge - 12} ${left + 16} ${hinge - 12}H${right - 16}Q${right} ${hinge - 12} ${right} ${hinge - 26}V${TOP}Z`;
  return [
    shape(outline, lit('pad'), 'pad-d', 2.4),
    stroke(quilt, 'pad-d', 2, 0.7),
    { ...stroke(quilt, 'pad-h', 1.2, 0.4), matrix: move(1.5, 1.5) },
    ...repeat(7, (i) =>
      shape(circle(left + 40 + (i * (right - left - 80)) / 6, hinge - 24, 6.4), dome('plas'), 'plas-d', 1.4),
    ),
  ];
}

function slots(left: number, right: number, hinge: number, seal: number): Drawing {
  const middle = (left + right) / 2;
  return [
    shape(
      `M${left - 60} ${hinge + 4}H${right + 60}L${right + 22} ${seal + 8}H${left - 22}Z`,
      front('plas'),
      'plas-d',
      2,
    ),
    stroke(`M${left - 54} ${hinge + 7}H${right + 54}`, 'shadow', 9, 0.45),
    ...repeat((right - left - 64) / 19, (i) => {
      const x = left + 30 + i * 19;
      return Math.abs(x - middle) > 110
        ? fill(roundRect(x, hinge + 16, 9, seal - hinge - 20, 4.5), 'plas-d')
        : [];
    }),
    stroke(`M${left - 20} ${seal + 7}H${right + 20}`, 'plas-h', 2.4, 0.8),
    shape(roundRect(left - 30, seal + 7, right - left + 60, 11, 5), 'rub-b', 'rub-d', 1.6),
  ];
}

function hingeArm(x: number, s: 1 | -1, hinge: number, seal: number): Drawing {
  const arm = `M${x - 13} ${hinge - 34}L${x + 13} ${hinge - 34}L${x + s * 10 + 12} ${seal + 44}H${x + s * 10 - 12}Z`;
  return [
    { ...fill(arm, 'shadow', 0.35), matrix: move(5, 4) },
    shape(arm, across('iron'), 'iron-d', 2),
    ...bolt(x, hinge - 20, 7),
    ...bolt(x + s * 3, hinge + 10, 9, 'iron'),
    ...bolt(x + s * 10, seal + 30, 7),
  ];
}
