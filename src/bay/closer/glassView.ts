/** The head of the receiver from above with its sight glass: clear, bubbles by their share, or oil that runs down it. */
import type { RectMm } from '../../layout/layout';
import type { BayFrame } from '../bayFrame';
import { sweatingPot } from '../drawing/gear/dew';
import { frostedPot } from '../drawing/gear/frost';
import { grain } from '../drawing/grain';
import { dome, lit } from '../drawing/paints';
import { arc, circle, ellipse, roundRect } from '../drawing/paths';
import { bar, type Drawing, fill, mm, ROUND, repeat, shape, stroke } from '../drawing/record';
import { bolt, canister, shadow } from '../drawing/solids';
import { backdrop, type CloseView } from './closeView';

const BOX: RectMm = [-200, -122, 400, 256];
const R = 70;
const POT = { id: 'drier', x: 0, y: 0, r: 150, lip: 190 } as const;

export function glassView(frame: BayFrame, partId: string): CloseView {
  const frost = frame.frost[partId] ?? 0;
  const sweat = frame.sweat[partId] ?? 0;
  return {
    drawing: [
      ...backdrop(BOX),
      ...canister(POT.x, POT.y, POT.r, POT.lip, 'alu', { elevation: 60 }),
      ...(sweat > 0 ? sweatingPot(POT, sweat) : []),
      ...(frost > 0 ? frostedPot(POT, frost) : []),
      ...head(),
      ...glass(),
      ...(frame.glass.streaked ? streaks() : bubbles(frame.glass.bubbles)),
      stroke(arc(0, 0, R * 0.72, R * 0.72, 3.3, 4.5), 'white', 5, 0.5, ROUND),
    ],
    box: BOX,
  };
}

const head = (): Drawing => {
  const block = roundRect(-132, -62, 264, 124, 22);
  return [
    ...shadow(block, 16),
    shape(block, lit('mill'), 'mill-d', 2.4),
    bar(-112, -56, 100, -56, 'mill-h', 2.4, 0.8),
    ...bolt(-108, 0, 12),
    ...bolt(108, 0, 12),
  ];
};

const glass = (): Drawing => [
  fill(circle(7, 8, R + 15), 'shadow', 0.3),
  shape(circle(0, 0, R + 14), dome('mill'), 'mill-d', 2.4),
  ...repeat(4, (i) => {
    const angle = i * 1.571 + 0.785;
    return bolt(Math.cos(angle) * (R + 7), Math.sin(angle) * (R + 7), 5.4, 'iron');
  }),
  shape(circle(0, 0, R), dome('iron'), 'iron-d', 3),
  fill(circle(0, 0, R - 5), 'floor-d'),
  fill(circle(0, 0, R - 6), 'dew', 0.18),
  fill(ellipse(0, R * 0.3, R * 0.62, R * 0.3), 'dew', 0.14),
];

const MOST_BUBBLES = 64;

/** Those that are there with few are there with more. */
function bubbles(share: number): Drawing {
  const random = grain(5);
  const all = repeat(MOST_BUBBLES, () => {
    const [angle, size, out] = [random() * 6.283, random(), Math.sqrt(random())];
    const k = 2.4 + size * size * 8;
    const [x, y] = [Math.cos(angle) * out * (R - 10 - k), Math.sin(angle) * out * (R - 10 - k)];
    return [
      { ...shape(circle(x, y, k), 'frost', 'frost', 1.6), fillAlpha: 0.28 },
      fill(circle(x - k * 0.35, y - k * 0.35, k * 0.28), 'white'),
    ];
  });
  return all.slice(0, 2 * Math.round(MOST_BUBBLES * share));
}

function streaks(): Drawing {
  const random = grain(6);
  const inner = R - 8;
  return [
    ...repeat(9, (i) => {
      const x = -inner * 0.8 + i * inner * 0.2;
      const h = Math.sqrt(Math.max(0, inner * inner - x * x)) * 0.86;
      const bend = (random() - 0.5) * 12;
      const d = `M${mm(x)} ${mm(-h)}C${mm(x + 8 + bend)} ${mm(-h * 0.3)} ${mm(x - 9 + bend)} ${mm(h * 0.3)} ${mm(x + bend * 0.4)} ${mm(h * 0.92)}`;
      return stroke(d, i % 3 === 0 ? 'zinc-b' : 'zinc-a', i % 3 === 0 ? 7 : 3.6, 0.8, ROUND);
    }),
    ...repeat(6, () => {
      const [angle, out] = [random() * 6.28, random() * inner * 0.7];
      return fill(ellipse(Math.cos(angle) * out, Math.sin(angle) * out, 3, 6.4), 'zinc-a', 0.85);
    }),
  ];
}
