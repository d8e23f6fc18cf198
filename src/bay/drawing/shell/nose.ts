/** The rounded nose, whole: leading edge, intake slot, lamps, bumper edge, then the ground in front of the car. */
import type { Shell } from '../../../layout/layout';
import { move } from '../matrix';
import { dome, down, lit } from '../paints';
import { circle } from '../paths';
import { type Drawing, fill, mm, ROUND, ROUND_JOIN, shape, stroke } from '../record';
import { PAST } from './body';

export function nose(shell: Shell): Drawing {
  const { left, right, grille } = shell;
  return [
    ...roundedPanel(shell),
    ...intakeSlot((left + right) / 2, grille),
    ...lampUnit(left - 26, 1, grille),
    ...lampUnit(right + 26, -1, grille),
    ...ground(left, right, shell.bumper),
  ];
}

/** The panel from the leading edge down. */
export function roundedPanel({ left, right, grille, bumper }: Shell): Drawing {
  const width = left + right;
  const middle = width / 2;
  const edge = (dy: number): string =>
    `M${-PAST} ${grille + 44 + dy}Q${left - 60} ${grille + 30 + dy} ${left + 30} ${grille + 6 + dy}Q${middle} ${grille - 14 + dy} ` +
    `${right - 30} ${grille + 6 + dy}Q${right + 60} ${grille + 30 + dy} ${width + PAST} ${grille + 44 + dy}`;
  const panel = `${edge(0)}V${bumper + PAST}H${-PAST}Z`;
  return [
    { ...fill(panel, 'shadow', 0.3), matrix: move(6, -5) },
    fill(panel, lit('paint')),
    stroke(edge(2), 'paint-h', 4, 0.9),
  ];
}

const intakeSlot = (middle: number, y: number): Drawing => [
  shape(
    `M${middle - 340} ${y + 14}Q${middle} ${y + 4} ${middle + 340} ${y + 14}L${middle + 322} ${y + 32}Q${middle} ${y + 24} ${middle - 322} ${y + 32}Z`,
    'plas-d',
    'paint-d',
    2,
  ),
  stroke(`M${middle - 316} ${y + 36}Q${middle} ${y + 28} ${middle + 316} ${y + 36}`, 'paint-h', 2, 0.7),
];

function lampUnit(x: number, s: 1 | -1, y: number): Drawing {
  const at = (dx: number, dy: number): string => `${mm(x + s * dx)} ${mm(y + dy)}`;
  const glass = `M${at(-116, 22)}Q${at(-128, -16)} ${at(-80, -38)}Q${at(-6, -34)} ${at(66, -4)}Q${at(84, 16)} ${at(56, 36)}Q${at(-30, 44)} ${at(-116, 22)}Z`;
  return [
    { ...fill(glass, 'shadow', 0.3), matrix: move(4, 5) },
    shape(glass, down('plas'), 'paint-d', 5, ROUND_JOIN),
    shape(circle(x - s * 62, y - 2, 26), dome('mill'), 'mill-d', 2.2),
    fill(circle(x - s * 62, y - 2, 14), dome('cast')),
    shape(circle(x + s * 8, y + 6, 21), dome('mill'), 'mill-d', 2.2),
    fill(circle(x + s * 8, y + 6, 11), dome('cast')),
    stroke(
      `M${at(-106, 2)}Q${at(-108, -18)} ${at(-76, -28)}Q${at(-10, -24)} ${at(50, 0)}`,
      'mill-h',
      3,
      0.75,
      ROUND,
    ),
  ];
}

/** The bumper's edge and the ground in front of it. */
export function ground(left: number, right: number, y: number): Drawing {
  const width = left + right;
  const edge = (dy: number): string =>
    `M${-PAST} ${y - 58 + dy}C${left - 220} ${y - 56 + dy} ${left - 90} ${y - 24 + dy} ${left + 150} ${y - 8 + dy}` +
    `C${left + 330} ${y + 3 + dy} ${right - 330} ${y + 3 + dy} ${right - 150} ${y - 8 + dy}` +
    `C${right + 90} ${y - 24 + dy} ${right + 220} ${y - 56 + dy} ${width + PAST} ${y - 58 + dy}`;
  const below = `${edge(0)}V${y + PAST}H${-PAST}Z`;
  return [
    fill(below, lit('floor')),
    fill(below, 'shadow', 0.62),
    stroke(edge(-3), 'paint-d', 9, 0.8),
    stroke(edge(-10), 'paint-a', 2.4, 0.5),
  ];
}
