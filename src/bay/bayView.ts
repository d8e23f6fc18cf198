/**
 * The drawn bay: pixi below, its twin of buttons above. It shows frames and reports what hands do; it decides nothing.
 * The picture is only painted when something changed, and while something moves.
 */
import './bay.css';
import type { Layout, PointMm } from '../layout/layout';
import { word } from '../words/words';
import type { BayCallbacks, BayOptions, BayTheme, BayView, CreateBay } from './bayApi';
import { type BayFrame, stillFrame } from './bayFrame';
import {
  type Camera,
  COVER_LEVEL,
  cameraFor,
  type HostSize,
  levelAfter,
  openingLevel,
  toBay,
} from './camera';
import { closeUp } from './closeUp';
import { createHands } from './hands';
import { ledWay } from './hose/hoseWays';
import { hoseOfCoupler } from './itemIds';
import { createPaintLoop } from './paintLoop';
import { createPointer } from './pointer';
import { makeRenderer, suitableRenderer } from './renderer';
import { createScene } from './scene/bayScene';
import { type Entry, entriesOf, type GearPlaces } from './twin/entries';
import { createInset } from './twin/inset';
import { bindKeyboard } from './twin/keyboard';
import { createLabels } from './twin/labels';
import { createTwin } from './twin/twin';

/** More device pixels than this to a CSS pixel are not worth their time. */
const MOST_RESOLUTION = 2;

/** Puts a bay into a host element that has a size. Resolves once the renderer is there and the first picture asked for. */
export const createBay: CreateBay = async (host, layout, theme, callbacks, options = {}) => {
  const size = sizeOf(host);
  const resolution = Math.min(MOST_RESOLUTION, window.devicePixelRatio || 1);
  const kind = options.renderer ?? suitableRenderer();
  const renderer = await makeRenderer(kind, size.width, size.height, resolution);
  return bindBay(host, layout, theme, callbacks, options, renderer, resolution);
};

type Renderer = Awaited<ReturnType<typeof makeRenderer>>;

function bindBay(
  host: HTMLElement,
  layout: Layout,
  firstTheme: BayTheme,
  callbacks: BayCallbacks,
  options: BayOptions,
  renderer: Renderer,
  resolution: number,
): BayView {
  const still = options.reducedMotion ?? window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  const scene = createScene(layout, still, () => changed());
  const twin = createTwin(word('bay.drawing'));
  const labels = createLabels(layout);
  const look = (targetId: string, width: number, height: number): HTMLCanvasElement | null =>
    closeUp(layout, frame, targetId, width, height, resolution, theme === 'dark');
  const inset = createInset(layout, look);
  const root = document.createElement('div');
  root.className = 'bay-view';
  root.append(renderer.canvas as HTMLCanvasElement, twin.root, ...labels.elements, ...inset.elements);
  host.append(root);

  let frame: BayFrame = stillFrame(layout.ports.map((port) => port.id));
  let theme = firstTheme;
  let size = sizeOf(host);
  let level = openingLevel(size);
  let centre: PointMm | null = null;
  let camera: Camera = cameraFor(layout, size, level, centre);

  const places: GearPlaces = {
    coupler: (hose) => scene.hoses[hose].couplerAt(),
    can: scene.can.canAt,
    valve: scene.can.valveAt,
    dial: scene.can.dialAt,
    scale: scene.can.scaleAt,
  };
  const loop = createPaintLoop(scene.tick, () => renderer.render(scene.stage));
  const entries = (): readonly Entry[] => entriesOf(layout, frame, places, hands.hand(), hands.ready());
  const changed = (): void => {
    const list = entries();
    const hand = hands.hand();
    const carrying = hand.doing === 'carrying';
    twin.show(list, camera);
    root.dataset.carrying = String(carrying);
    const carriesHose = hand.doing === 'carrying' && hoseOfCoupler(hand.item) !== null;
    labels.keepClear(camera, frame.keepClearShown || carriesHose);
    labels.refresh(list, camera);
    inset.show(frame, camera);
    loop.want();
  };
  const hands = createHands({
    layout,
    scene,
    callbacks,
    frame: () => frame,
    mmPerPx: () => 1 / camera.scale,
    changed,
  });

  const refit = (): void => {
    camera = cameraFor(layout, size, level, centre);
    scene.refit(camera, size, resolution, theme === 'dark');
    scene.stage.position.set(0, 0);
    changed();
  };
  const resize = (): void => {
    const now = sizeOf(host);
    if (now.width === size.width && now.height === size.height) return;
    if (openingLevel(now) !== openingLevel(size)) level = openingLevel(now);
    size = now;
    renderer.resize(Math.max(1, size.width), Math.max(1, size.height));
    refit();
  };

  /** The name of what has focus or lies under the pointer; a way to lead a hose is shown dotted before it is taken. */
  const point = (entry: Entry | null): void => {
    labels.tag(entry, camera);
    const hand = hands.hand();
    const item = hand.doing === 'carrying' ? hand.item : hands.ready()?.item;
    const hose = item === undefined ? null : hoseOfCoupler(item);
    scene.rings.preview(entry?.route && hose ? ledWay(layout, hose, entry.id, entry.route) : []);
    loop.want();
  };

  const pointer = createPointer({
    root,
    hands,
    callbacks,
    frame: () => frame,
    camera: () => camera,
    dialAt: scene.can.dialAt,
    point,
    entries,
    entryOf: twin.entryOf,
    focus: twin.focus,
    canPan: () => level > COVER_LEVEL,
    pan(dx, dy, done) {
      scene.stage.position.set(dx, dy);
      loop.want();
      if (!done) return;
      centre = toBay(camera, [size.width / 2 - dx, size.height / 2 - dy]);
      refit();
    },
  });
  bindKeyboard({ layout, twin, hands, callbacks, frame: () => frame, entries });
  twin.root.addEventListener('focusin', (event) => point(twin.entryOf(event.target)));
  twin.root.addEventListener('focusout', () => point(null));
  const watcher = new ResizeObserver(resize);
  watcher.observe(host);
  scene.show(frame);
  refit();

  return {
    update(next) {
      frame = next;
      scene.show(frame);
      hands.follow(frame);
      changed();
    },
    resize,
    setTheme(next) {
      theme = next;
      refit();
    },
    zoom(step) {
      level = levelAfter(level, step);
      centre = null;
      refit();
    },
    focus: twin.focus,
    closeUp: look,
    dispose() {
      loop.stop();
      watcher.disconnect();
      pointer.dispose();
      root.remove();
      scene.stage.destroy({ children: true });
      renderer.destroy();
    },
  };
}

function sizeOf(host: HTMLElement): HostSize {
  return { width: host.clientWidth, height: host.clientHeight };
}
