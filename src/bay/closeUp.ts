/**
 * The look-closer picture of one thing, on a canvas of its own: a port's fitting from the side, a clutch face-on, or the
 * bay's own drawing brought near. It shows the frame's state and says nothing that the eye could not see.
 */
import type { Layout, Port, RectMm } from '../layout/layout';
import { type Stop, stopsOf } from '../layout/order';
import { lineOf, partOf } from '../layout/trace';
import type { BayFrame } from './bayFrame';
import { fittingSide } from './drawing/gear/fittingSide';
import { frostedLine } from './drawing/gear/frost';
import { portCover } from './drawing/gear/portCover';
import { paint } from './drawing/painter';
import { lit } from './drawing/paints';
import { lampStrength, paletteOf } from './drawing/palette';
import { clutchFace } from './drawing/parts/clutchFace';
import { condenserDirt } from './drawing/parts/condenser';
import { fanStill } from './drawing/parts/fanElectric';
import { roundRect } from './drawing/paths';
import { bayPicture } from './drawing/picture';
import { type Drawing, fill } from './drawing/record';
import { runsOf } from './drawing/run';

interface View {
  readonly drawing: Drawing;
  readonly box: RectMm;
}

const CLUTCHES: ReadonlySet<string> = new Set(['compressor-front', 'compressor-side', 'clutch-front']);
/** Size of the part of the bay that is brought near, over the thing's own size, and its limits. */
const ROOM = 1.4;
const LEAST_MM = 210;
const MOST_MM = 420;

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

function viewOf(layout: Layout, frame: BayFrame, id: string, dark: boolean): View | null {
  const port = layout.ports.find((p) => p.id === id);
  if (port) return portView(layout, frame, port);
  const part = layout.parts.find((p) => p.id === id);
  if (part && CLUTCHES.has(part.kind)) return clutchView(frame);
  const stop = stopsOf(layout).find((known) => known.id === id);
  return stop ? { drawing: wholeBay(layout, frame, dark), box: near(stop) } : null;
}

const BACKDROP: RectMm = [-700, -600, 1400, 1200];
const backdrop = (): Drawing => [fill(roundRect(...BACKDROP, 0), lit('floor'))];

function portView(layout: Layout, frame: BayFrame, port: Port): View {
  const tubeMm = 'line' in port.on ? lineOf(layout, port.on.line).diameterMm : PART_TUBE_MM;
  const { cap = 'blank', bore = port.boreMm, covered = false } = frame.ports[port.id] ?? {};
  if (covered && port.cover) {
    const [, , w, h] = port.cover.rect;
    const cover = portCover({ rect: [-w / 2, -h / 2, w, h] });
    return { drawing: [...backdrop(), ...cover], box: [-w * 0.6, -h, w * 1.2, h * 2] };
  }
  return { drawing: [...backdrop(), ...fittingSide(bore, cap, tubeMm)], box: [-200, -90, 400, 340] };
}

/** A port on a pot stands on its lid, drawn as a broad band. */
const PART_TUBE_MM = 20;

const clutchView = (frame: BayFrame): View => ({
  drawing: [...backdrop(), ...clutchFace(100, frame.clutchEngaged)],
  box: [-140, -130, 290, 260],
});

/** The bay round a thing, near enough to be nearer than the bay itself: of a long thing only its middle. */
function near({ at: [x, y], hit: [, , w, h] }: Stop): RectMm {
  const side = Math.max(LEAST_MM, Math.min(MOST_MM, Math.max(w, h) * ROOM));
  return [x - side / 2, y - side * 0.425, side, side * 0.85];
}

function wholeBay(layout: Layout, frame: BayFrame, dark: boolean): Drawing {
  const { below, fans, above } = bayPicture(layout, frame.label, lampStrength(dark));
  const dirty = layout.parts.filter((part) => part.kind === 'condenser' && frame.condenserDirt > 0.3);
  const frosted = runsOf(layout).filter((run) => (frame.frost[run.line.id] ?? 0) > 0);
  return [
    ...below,
    ...fans.flatMap(fanStill),
    ...above,
    ...dirty.flatMap((part) => condenserDirt(partOf(layout, part.id), layout.shell.beam + 60)),
    ...frosted.flatMap((run) => frostedLine(run, 0, frame.frost[run.line.id] ?? 0)),
  ];
}
