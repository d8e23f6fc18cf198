/** Frost and dew on lines and pots, by cover. Cover is drawn in steps of four hundredths: finer changes are not seen. */
import { Container, Sprite } from 'pixi.js';
import { courseOf, nearestStation } from '../../layout/course';
import type { Layout, Part } from '../../layout/layout';
import type { BayFrame } from '../bayFrame';
import { sweatingLine, sweatingPot } from '../drawing/gear/dew';
import { frostedLine, frostedPot } from '../drawing/gear/frost';
import type { Pot } from '../drawing/gear/pot';
import { sizeOf } from '../drawing/parts/partSize';
import type { Drawing } from '../drawing/record';
import { type Run, runsOf } from '../drawing/run';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

const STEPS = 25;
const POTS: ReadonlySet<string> = new Set(['accumulator', 'drier', 'drier-slim']);

export function coverNode(context: SceneContext): SceneNode {
  const view = new Container();
  const runs = runsOf(context.layout).filter((run) => run.loop);
  const pots = context.layout.parts.filter((part) => POTS.has(part.kind)).map(potOf);
  const sprites = new Map<string, Sprite>();
  const spriteOf = (id: string): Sprite => {
    const found = sprites.get(id);
    if (found) return found;
    const made = new Sprite();
    sprites.set(id, made);
    view.addChild(made);
    return made;
  };
  return {
    view,
    show(frame) {
      for (const run of runs)
        showCover(context, spriteOf(run.line.id), run.line.id, frame, lineCover(context.layout, run));
      for (const pot of pots) showCover(context, spriteOf(pot.id), pot.id, frame, potCover(pot));
    },
  };
}

type CoverDrawing = (frost: number, sweat: number) => Drawing;

function showCover(
  context: SceneContext,
  sprite: Sprite,
  id: string,
  frame: BayFrame,
  draw: CoverDrawing,
): void {
  const frost = Math.round((frame.frost[id] ?? 0) * STEPS);
  const sweat = Math.round((frame.sweat[id] ?? 0) * STEPS);
  sprite.visible = frost > 0 || sweat > 0;
  if (sprite.visible)
    showStamp(
      sprite,
      context.stamps.slot(`cover:${id}`, `${frost}:${sweat}`, () => draw(frost / STEPS, sweat / STEPS)),
    );
}

/** A line is coated from its cold end: where it leaves a metering device inside it, else its start. */
function lineCover(layout: Layout, run: Run): CoverDrawing {
  const start = coldStart(layout, run);
  const reach = (cover: number): number => start + (1 - start) * cover;
  return (frost, sweat) => [
    ...(sweat > frost ? sweatingLine(run, reach(frost), reach(sweat)) : []),
    ...(frost > 0 ? frostedLine(run, start, reach(frost)) : []),
  ];
}

const potCover =
  (pot: Pot): CoverDrawing =>
  (frost, sweat) => [
    ...(sweat > 0 ? sweatingPot(pot, sweat) : []),
    ...(frost > 0 ? frostedPot(pot, frost) : []),
  ];

function coldStart(layout: Layout, run: Run): number {
  const [held] = run.line.holds ?? [];
  const part = layout.parts.find((p) => p.id === held);
  if (!part) return 0;
  const course = courseOf(run.line.way, run.line.fillet);
  return nearestStation(course, part.at).alongMm / course.lengthMm;
}

const potOf = (part: Part): Pot => ({
  id: part.id,
  x: part.at[0],
  y: part.at[1],
  r: sizeOf(part, 'r'),
  lip: sizeOf(part, 'lip'),
});
