/**
 * A stretch of the condenser from the front: flat tubes, folded fins between them, the tank at its end. Lint, fibres and
 * leaves lie on it by what the air has lost; oil where it leaks.
 */
import type { RectMm } from '../../layout/layout';
import type { BayFrame } from '../bayFrame';
import { dyeGlow, oilPatch, soapFoam } from '../drawing/gear/leakMarks';
import { grain, seedOf } from '../drawing/grain';
import { across, down } from '../drawing/paints';
import { ellipse, polyline, roundRect } from '../drawing/paths';
import { bar, type Drawing, fill, mm, ROUND_JOIN, repeat, shape, stroke } from '../drawing/record';
import { backdrop, type CloseView } from './closeView';

const BOX: RectMm = [-200, -128, 400, 256];
const PITCH = 43;
const TUBE = 14;
const LEFT = -150;
/** Past the frame, for one that is broader. */
const WIDE = 620;
const FOLD = 6.5;
/** Where a leak shows. */
const MARK = { x: 60, y: 16, r: 76 } as const;

export function condenserView(frame: BayFrame, partId: string): CloseView {
  const { soap, glow } = frame;
  return {
    drawing: [
      ...backdrop(BOX),
      fill(roundRect(LEFT, -140, WIDE, 280, 0), 'floor-d'),
      ...repeat(7, (i) => row(-150 + i * PITCH)),
      ...tank(),
      ...oilPatch(partId, MARK.x, MARK.y, MARK.r, frame.stains[partId] ?? 0),
      ...dirt(partId, frame.condenserDirt),
      ...(soap?.at === partId ? soapFoam(partId, MARK.x, MARK.y, MARK.r, soap.level) : []),
      ...(glow?.at === partId ? dyeGlow(partId, MARK.x, MARK.y, MARK.r, glow.level) : []),
    ],
    box: BOX,
  };
}

function row(y: number): Drawing {
  const folds = Array.from({ length: Math.floor(WIDE / FOLD) - 2 }, (_, i): readonly [number, number] => [
    LEFT + 6 + i * FOLD,
    y + (i % 2 === 0 ? TUBE + 1 : PITCH - 1),
  ]);
  const fins = polyline(folds);
  return [
    stroke(fins, 'mill-d', 3, 1, ROUND_JOIN),
    stroke(fins, 'mill-b', 1.6, 1, ROUND_JOIN),
    shape(roundRect(LEFT - 8, y, WIDE, TUBE, 5), down('alu'), 'alu-d', 1.6),
  ];
}

const tank = (): Drawing => [
  fill(roundRect(-192, -150, 58, 300, 14), 'shadow', 0.3),
  shape(roundRect(-198, -150, 56, 300, 14), across('alu'), 'alu-d', 2.2),
];

const [LINT, FIBRES, LEAVES] = [320, 70, 10] as const;

/** What lies there with little lies there with more. */
function dirt(id: string, share: number): Drawing {
  if (share <= 0) return [];
  const random = grain(seedOf(id));
  const at = (): readonly [number, number] => [LEFT + random() * WIDE, -128 + random() * 256];
  const lint = repeat(LINT, (i) => {
    const [x, y] = at();
    const k = 5 + random() * 13;
    return fill(ellipse(x, y, k * 1.4, k * 0.7), `lint-${(i % 4) + 1}`, 0.45 + random() * 0.4);
  });
  const fibres = repeat(FIBRES, (i) => {
    const [x, y] = at();
    const angle = random() * 6.28;
    return bar(x, y, x + Math.cos(angle) * 24, y + Math.sin(angle) * 16, i % 3 ? 'zinc-a' : 'iron-d', 2, 0.8);
  });
  const leaves = repeat(LEAVES, (i) => leaf(...at(), i, random() * 6.28));
  return [
    fill(roundRect(LEFT, -140, WIDE, 280, 0), 'lint', 0.5 * share),
    ...lint.slice(0, Math.ceil(LINT * share)),
    ...fibres.slice(0, Math.ceil(FIBRES * share)),
    ...leaves.slice(0, 2 * Math.round(LEAVES * share)),
  ];
}

/** A leaf and its rib. */
function leaf(x: number, y: number, i: number, angle: number): Drawing {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const at = (u: number, v: number): string => `${mm(x + u * c - v * s)} ${mm(y + u * s + v * c)}`;
  return [
    shape(
      `M${at(-26, 0)}Q${at(-4, -19)} ${at(26, 0)}Q${at(-4, 19)} ${at(-26, 0)}Z`,
      `leaf-${(i % 3) + 1}`,
      'leaf-d',
      1.6,
      ROUND_JOIN,
    ),
    stroke(`M${at(-34, 0)}L${at(22, 0)}`, 'leaf-d', 1.6),
  ];
}
