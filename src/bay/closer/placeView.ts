/** The bay round a thing, near enough to be nearer than the bay itself: of a long thing only its clearest piece. */
import type { Layout, Part, RectMm } from '../../layout/layout';
import type { Stop } from '../../layout/order';
import { placePoints } from '../../layout/placePoints';
import type { BayFrame } from '../bayFrame';
import { port as portDrawing } from '../drawing/gear/cap';
import { coversOf } from '../drawing/gear/coverDrawing';
import { dyeGlow, MARK_MM, oilPatch, soapFoam } from '../drawing/gear/leakMarks';
import { portCover } from '../drawing/gear/portCover';
import { lampStrength } from '../drawing/palette';
import { condenserDirt } from '../drawing/parts/condenserDirt';
import { fanStill } from '../drawing/parts/fan';
import { bayPicture } from '../drawing/picture';
import type { Drawing } from '../drawing/record';
import type { CloseView } from './closeView';

/** Size of the part of the bay that is brought near, over the thing's own size, and its limits. */
const ROOM = 1.4;
const LEAST_MM = 210;
const MOST_MM = 420;
const SHAPE = 0.64;

export function placeView(
  layout: Layout,
  frame: BayFrame,
  stop: Pick<Stop, 'at' | 'hit'>,
  dark: boolean,
): CloseView {
  const [x, y] = stop.at;
  const [, , w, h] = stop.hit;
  const side = Math.max(LEAST_MM, Math.min(MOST_MM, Math.max(w, h / SHAPE) * ROOM));
  const box: RectMm = [x - side / 2, y - (side * SHAPE) / 2, side, side * SHAPE];
  return { drawing: [...bay(layout, frame, dark), ...leakMarks(layout, frame)], box };
}

interface Still {
  readonly key: string;
  readonly drawing: Drawing;
}

/** The last one of each bay: it is the same for every place. */
const kept = new WeakMap<Layout, Still>();

function stillBay(layout: Layout, { label }: BayFrame, dark: boolean): Drawing {
  const key = [dark, ...label].join();
  const found = kept.get(layout);
  if (found?.key === key) return found.drawing;
  const { below, fans, above } = bayPicture(layout, label, lampStrength(dark));
  const drawing = [...below, ...fans.flatMap(fanStill), ...above];
  kept.set(layout, { key, drawing });
  return drawing;
}

function bay(layout: Layout, frame: BayFrame, dark: boolean): Drawing {
  const of = (id: string): readonly [number, number] => [frame.frost[id] ?? 0, frame.sweat[id] ?? 0];
  const condensers = layout.parts.filter(({ kind }) => kind === 'condenser');
  return [
    ...stillBay(layout, frame, dark),
    ...(frame.condenserDirt > 0
      ? condensers.flatMap((part) => faint(layout, part, frame.condenserDirt))
      : []),
    ...coversOf(layout).flatMap(([id, draw]) => draw(...of(id))),
    ...layout.ports.flatMap((port) => {
      const look = frame.ports[port.id] ?? { cap: 'blank', strap: false };
      if (look.covered && port.cover) return portCover(port.cover);
      return portDrawing(look.bore ?? port.boreMm, port.at, look);
    }),
  ];
}

/** Dirt as strong as it lies. */
function faint(layout: Layout, part: Part, share: number): Drawing {
  return condenserDirt(part, layout.shell.beam + 60).map((record) =>
    'text' in record
      ? record
      : { ...record, fillAlpha: (record.fillAlpha ?? 1) * share, inkAlpha: (record.inkAlpha ?? 1) * share },
  );
}

function leakMarks(layout: Layout, { stains, soap, glow }: BayFrame): Drawing {
  const points = placePoints(layout);
  const at = (id: string, draw: (x: number, y: number) => Drawing): Drawing => {
    const point = points.get(id);
    return point ? draw(...point) : [];
  };
  return [
    ...Object.entries(stains).flatMap(([id, share]) => at(id, (x, y) => oilPatch(id, x, y, MARK_MM, share))),
    ...(soap ? at(soap.at, (x, y) => soapFoam(soap.at, x, y, MARK_MM, soap.level)) : []),
    ...(glow ? at(glow.at, (x, y) => dyeGlow(glow.at, x, y, MARK_MM, glow.level)) : []),
  ];
}
