/**
 * The pixi scene: still layers with the fans' blades between them, then everything that lives. Nodes are listed once, in
 * drawing order; the scene hands frames, time and new sizes to all of them.
 */
import { Container } from 'pixi.js';
import type { CoupledHose, Layout, RectMm } from '../../layout/layout';
import type { BayFrame } from '../bayFrame';
import type { Camera, HostSize } from '../camera';
import { lampStrength, type Palette, paletteOf } from '../drawing/palette';
import { fanPlace } from '../drawing/parts/fan';
import { isFan } from '../drawing/parts/isFan';
import { bayPicture } from '../drawing/picture';
import type { Desk } from '../ink/startDesk';
import type { Motion } from '../paintLoop';
import { createStamps } from '../stamps';
import { beltNode } from './beltNode';
import { type CanNode, canNode } from './canNode';
import { clutchNode } from './clutchNode';
import { coverNode } from './coverNode';
import { fanNode } from './fanNode';
import { hazeNode } from './hazeNode';
import { type HoseNode, hoseNode } from './hoseNode';
import { leakNode } from './leakNode';
import { lookNode } from './lookNode';
import { markNode } from './markNode';
import { portNode } from './portNode';
import { type RingNode, ringNode } from './ringNode';
import type { SceneContext, SceneNode } from './sceneNode';
import { dirtNode, keepClearNode, sightGlassNode } from './smallNodes';
import { type SpareEndNode, spareEndNode } from './spareEndNode';
import { createStillLayers } from './stillLayers';

export interface BayScene {
  readonly stage: Container;
  readonly hoses: Readonly<Record<CoupledHose, HoseNode>>;
  readonly can: CanNode;
  readonly spareEnd: SpareEndNode;
  readonly rings: RingNode;
  show(frame: BayFrame): void;
  /** Paints everything for a camera, a size and a theme, and so many CSS pixels more on each side. */
  refit(camera: Camera, size: HostSize, resolution: number, dark: boolean, marginPx: number): void;
  setCarryingHose(carrying: boolean): void;
  /** Time goes on; what of the picture moved. */
  tick(seconds: number): Motion;
}

export function createScene(desk: Desk, layout: Layout, still: boolean, rested: () => void): BayScene {
  const stage = new Container();
  const stamps = createStamps(desk);
  let palette: Palette = {};
  let leftMm = layout.view[0];
  const context: SceneContext = {
    layout,
    stamps,
    palette: () => palette,
    leftMm: () => leftMm,
    rested,
    still,
  };
  const clear = keepClearNode(context);
  const made = (hose: CoupledHose): HoseNode => hoseNode(context, hose);
  const hoses = { low: made('low'), high: made('high'), charging: made('charging') };
  const can = canNode(context);
  const spareEnd = spareEndNode(context);
  const rings = ringNode(context);
  const worlds: Container[] = [];
  const live = liveNodes(context);
  const haze = hazeNode(context, (hose) => hoses[hose].couplerAt());
  const handled: SceneNode[] = [spareEnd, can, hoses.charging, hoses.low, hoses.high, haze];
  const nodes: SceneNode[] = [...live, clear, ...handled];

  const addWorld = (...views: readonly Container[]): void => {
    const world = new Container();
    world.addChild(...views);
    worlds.push(world);
    stage.addChild(world);
  };
  const blades = layout.parts.filter(isFan).map((part) => fanNode(context, part));
  const turning: SceneNode[] = [...blades, ...live];
  const layers = createStillLayers(desk, windowOf(layout));
  stage.addChild(layers.base);
  addWorld(...blades.map((node) => node.view));
  stage.addChild(layers.patch);
  addWorld(...nodes.map((node) => node.view), rings.view);

  let label = '';
  let last: BayFrame | null = null;
  let fitted: Parameters<BayScene['refit']> | null = null;
  const paintStill = (frame: BayFrame): void => {
    if (!fitted) return;
    const [camera, size, resolution, dark, marginPx] = fitted;
    const picture = bayPicture(layout, frame.label, lampStrength(dark));
    layers.paint(picture, palette, camera, size, resolution, marginPx);
    label = frame.label.join('\n');
  };
  const show = (frame: BayFrame, fresh = false): void => {
    last = frame;
    if (!fitted) return;
    if (frame.label.join('\n') !== label) paintStill(frame);
    for (const node of [...blades, ...nodes]) node.show(frame, fresh);
  };

  return {
    stage,
    hoses,
    can,
    spareEnd,
    rings,
    show: (frame) => show(frame),
    refit(camera, size, resolution, dark, marginPx) {
      if (fitted?.[3] !== dark) palette = paletteOf(dark, layout.paint);
      fitted = [camera, size, resolution, dark, marginPx];
      leftMm = camera.x - marginPx / camera.scale;
      stamps.reset(camera.scale * resolution, palette);
      for (const world of worlds) {
        world.scale.set(camera.scale);
        world.position.set(-camera.x * camera.scale, -camera.y * camera.scale);
      }
      if (!last) return;
      paintStill(last);
      show(last, true);
    },
    setCarryingHose: clear.setCarrying,
    tick(seconds) {
      let motion: Motion = 'none';
      for (const node of turning) if (node.tick?.(seconds)) motion = 'turning';
      for (const node of handled) if (node.tick?.(seconds)) motion = 'handled';
      return motion;
    },
  };
}

/** Round the mouths of all fans, with room for the shadow under a blade. */
function windowOf(layout: Layout): RectMm {
  const mouths = layout.parts.filter(isFan).map(fanPlace);
  if (mouths.length === 0) return [0, 0, 0, 0];
  const left = Math.min(...mouths.map(({ x, r }) => x - r)) - WINDOW_ROOM_MM;
  const right = Math.max(...mouths.map(({ x, r }) => x + r)) + WINDOW_ROOM_MM;
  const top = Math.min(...mouths.map(({ y, r, squash }) => y - r * squash)) - WINDOW_ROOM_MM;
  const bottom = Math.max(...mouths.map(({ y, r, squash }) => y + r * squash)) + WINDOW_ROOM_MM;
  return [left, top, right - left, bottom - top];
}

const WINDOW_ROOM_MM = 22;

/** Everything of the car that moves or changes, in drawing order. */
function liveNodes(context: SceneContext): SceneNode[] {
  const ofKind = (...kinds: readonly string[]) =>
    context.layout.parts.filter((part) => kinds.includes(part.kind));
  return [
    ...ofKind('condenser').map((part) => dirtNode(context, part)),
    ...ofKind('belt-front', 'belt-side').map((part) => beltNode(context, part)),
    ...ofKind('clutch-front', 'compressor-side').map((part) => clutchNode(context, part)),
    markNode(context),
    coverNode(context),
    leakNode(context),
    ...ofKind('drier').map((part) => sightGlassNode(context, part)),
    ...context.layout.ports.map((port) => portNode(context, port)),
    lookNode(context),
  ];
}
