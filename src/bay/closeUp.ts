/**
 * The look-closer picture of one thing, on a canvas of its own: a port's fitting or the coupler on it from the side, a loose
 * coupler and its mouth, a clutch face-on, the label, the sight glass, the can, the condenser's fins, or the bay's own
 * drawing brought near. It shows the frame's state and says nothing that the eye could not see.
 */
import type { Layout } from '../layout/layout';
import { type Stop, stopsOf } from '../layout/order';
import { placePoints } from '../layout/placePoints';
import { type BayFrame, hasCoupler } from './bayFrame';
import { canView } from './closer/canView';
import type { CloseView } from './closer/closeView';
import { clutchFaceView, clutchView } from './closer/clutchView';
import { condenserView } from './closer/condenserView';
import { glassView } from './closer/glassView';
import { labelView } from './closer/labelView';
import { looseCouplerView } from './closer/looseCouplerView';
import { placeView } from './closer/placeView';
import { portView } from './closer/portView';
import { paint } from './drawing/painter';
import { paletteOf } from './drawing/palette';
import { couplerId } from './itemIds';

/** Asked for by the inset beside a clutch that stands edge-on. */
export const CLUTCH_FACE = 'clutch:face';
const CLUTCHES: ReadonlySet<string> = new Set(['compressor-front', 'compressor-side', 'clutch-front']);

/** Null for an id that is nothing in this bay. */
export function closeUp(
  layout: Layout,
  frame: BayFrame,
  targetId: string,
  width: number,
  height: number,
  resolution: number,
  dark: boolean,
): HTMLCanvasElement | null {
  const view = viewOf(layout, frame, targetId, dark);
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d');
  if (!view || !context) return null;
  canvas.width = Math.round(width * resolution);
  canvas.height = Math.round(height * resolution);
  const [x, y, w, h] = view.box;
  const k = Math.min(canvas.width / w, canvas.height / h);
  const [left, top] = [x + w / 2 - canvas.width / 2 / k, y + h / 2 - canvas.height / 2 / k];
  context.setTransform(k, 0, 0, k, -left * k, -top * k);
  paint(context, view.drawing, paletteOf(dark, layout.paint));
  return canvas;
}

/** What is shown of an id; null for what is nothing in this bay. */
export function viewOf(layout: Layout, frame: BayFrame, id: string, dark: boolean): CloseView | null {
  if (frame.can?.id === id) return canView(frame.can);
  if (id === CLUTCH_FACE) return clutchFaceView(frame, shaftOil(layout, frame));
  const hose = frame.hoses.filter(hasCoupler).find((one) => couplerId(one.id) === id);
  if (hose) return hose.port === null ? looseCouplerView(hose) : null;
  const port = layout.ports.find((p) => p.id === id);
  if (port) return portView(layout, frame, port);
  const part = layout.parts.find((p) => p.id === id);
  const own = part ? partView(layout, frame, part.kind, id) : null;
  if (own) return own;
  const stop = stopsOf(layout).find((known) => known.id === id) ?? jointStop(layout, id);
  return stop ? placeView(layout, frame, stop, dark) : null;
}

/** A joint is no stop of its own: it is looked at where it lies. */
function jointStop(layout: Layout, id: string): Pick<Stop, 'at' | 'hit'> | null {
  const at = placePoints(layout).get(id);
  return at ? { at, hit: [at[0], at[1], 0, 0] } : null;
}

/** Of parts that have a picture of their own. */
function partView(layout: Layout, frame: BayFrame, kind: string, id: string): CloseView | null {
  if (CLUTCHES.has(kind)) return clutchView(frame, shaftOil(layout, frame));
  if (kind === 'label') return labelView(frame.print);
  if (kind === 'drier') return glassView(frame, id);
  return kind === 'condenser' ? condenserView(frame, id) : null;
}

function shaftOil(layout: Layout, { stains }: BayFrame): number {
  const compressor = layout.parts.find((part) => part.kind.startsWith('compressor'));
  return stains[compressor?.id ?? ''] ?? 0;
}
