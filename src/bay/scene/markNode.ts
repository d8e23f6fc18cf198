/** Lines and parts that are traced or chosen: a line gets a halo of ink and amber and is drawn again over it. */
import { Container, Graphics, Sprite } from 'pixi.js';
import { nearestStation } from '../../layout/course';
import type { Layout } from '../../layout/layout';
import { overBeam } from '../drawing/overBeam';
import { stillPart } from '../drawing/parts/stillPart';
import { pipe } from '../drawing/pipe';
import { type Drawing, ROUND, stroke } from '../drawing/record';
import { HOSE_FACTOR, pathOf, type Run, runsOf } from '../drawing/run';
import { showStamp } from '../stamps';
import type { SceneContext, SceneNode } from './sceneNode';

export function markNode(context: SceneContext): SceneNode {
  const view = new Container();
  const boxes = new Graphics();
  view.addChild(boxes);
  const runs = new Map(runsOf(context.layout).map((run) => [run.line.id, run]));
  const sprites = new Map<string, Sprite>();
  let boxed = '';
  return {
    view,
    show(frame, fresh) {
      for (const [id, sprite] of sprites) sprite.visible = frame.marked.includes(id);
      for (const id of frame.marked) {
        const run = runs.get(id);
        if (!run) continue;
        const sprite = sprites.get(id) ?? new Sprite();
        if (!sprites.has(id)) view.addChild(sprite);
        sprites.set(id, sprite);
        showStamp(
          sprite,
          context.stamps.get(`mark:${id}`, () => marked(run, context)),
        );
      }
      const now = frame.marked.join();
      if (!fresh && now === boxed) return;
      boxed = now;
      boxes.clear();
      for (const part of context.layout.parts) {
        if (!part.hit || !frame.marked.includes(part.id)) continue;
        const [x, y, w, h] = part.hit;
        boxes.roundRect(x - 6, y - 6, w + 12, h + 12, 14).stroke({ color: context.palette().ink, width: 8 });
        boxes
          .roundRect(x - 6, y - 6, w + 12, h + 12, 14)
          .stroke({ color: context.palette().select, width: 4.5 });
      }
    },
  };
}

/** Things that stand on lines and would be hidden by a line drawn again. */
const ON_LINES: ReadonlySet<string> = new Set(['accumulator', 'block', 'orifice', 'flange', 'switch']);

function standingOn(run: Run, layout: Layout): Drawing {
  return layout.parts
    .filter((part) => ON_LINES.has(part.kind) && part.z > run.line.z)
    .filter((part) => nearestStation(run.course, part.at).awayMm < NEAR_MM)
    .sort((a, b) => a.z - b.z)
    .flatMap(stillPart);
}

const NEAR_MM = 60;

function marked(run: Run, context: SceneContext): Drawing {
  const wide = run.width * HOSE_FACTOR;
  return [
    stroke(pathOf(run), 'select', wide + 18, 1, ROUND),
    stroke(pathOf(run), 'ink', wide + 9, 1, ROUND),
    ...pipe(run),
    ...standingOn(run, context.layout),
    ...(run.line.overBeam ? overBeam(run, context.layout.shell) : []),
  ];
}
