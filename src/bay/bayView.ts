/**
 * The drawn bay: pixi below, its twin of buttons above. It shows frames and reports what hands do; it decides nothing.
 * The picture is only painted when something changed, and while something moves.
 */
import './bay.css';
import type { Layout, PointMm } from '../layout/layout';
import { word } from '../words/words';
import type { BayCallbacks, BayOptions, BayTheme, BayView, CreateBay } from './bayApi';
import { type BayFrame, stillFrame } from './bayFrame';
import { closeUp } from './closeUp';
import { loadParts } from './drawing/parts/partBook';
import { dangersOf, type HoseDanger } from './gesture/hoseDanger';
import { createHands, type Hands } from './hands';
import { LED_STEPS, laidAlong } from './hose/chain';
import { ledWay } from './hose/hoseWays';
import { hoseOfCoupler } from './itemIds';
import { createPaintLoop } from './paintLoop';
import { createPointer } from './pointer';
import { type BayRenderer, makeRenderer } from './renderer';
import { createScene } from './scene/bayScene';
import { type Entry, entriesOf, type GearPlaces } from './twin/entries';
import { handHint } from './twin/handHint';
import { createHintLine } from './twin/hintLine';
import { createInset } from './twin/inset';
import { fromUnder, intoPicture } from './twin/intoSight';
import { bindKeyboard } from './twin/keyboard';
import { createLabels } from './twin/labels';
import { createTwin } from './twin/twin';
import { unhurried } from './twin/unhurried';
import { createViewport, type Viewport } from './viewport';

/** More device pixels than this to a CSS pixel are not worth their time. */
const MOST_RESOLUTION = 2;
/** Where it can be moved the picture is painted this far past its edges, CSS pixels; moved farther it is painted anew. */
const MARGIN_PX = 200;

/** Puts a bay into a host element that has a size. Resolves once the renderer is there and the first picture asked for. */
export const createBay: CreateBay = async (host, layout, theme, callbacks, options = {}) => {
  const viewport = createViewport(host, layout);
  const resolution = Math.min(MOST_RESOLUTION, window.devicePixelRatio || 1);
  const { width, height } = viewport.size();
  const making = makeRenderer(width, height, resolution);
  try {
    const [renderer] = await Promise.all([making, loadParts(layout.id)]);
    return bindBay(host, layout, theme, callbacks, options, viewport, renderer, resolution);
  } catch (error) {
    making.then(
      ({ desk }) => desk.stop(),
      () => undefined,
    );
    throw error;
  }
};

function bindBay(
  host: HTMLElement,
  layout: Layout,
  firstTheme: BayTheme,
  callbacks: BayCallbacks,
  options: BayOptions,
  viewport: Viewport,
  renderer: BayRenderer,
  resolution: number,
): BayView {
  let frame: BayFrame = stillFrame(layout.ports.map((port) => port.id));
  let theme = firstTheme;
  const { camera, size } = viewport;
  const finger = window.matchMedia('(pointer: coarse)');
  const look = (targetId: string, width: number, height: number): HTMLCanvasElement | null =>
    closeUp(layout, frame, targetId, width, height, resolution, theme === 'dark');

  const scene = createScene(renderer.desk, layout, options.reducedMotion ?? prefersStill(), () => changed());
  const twin = createTwin(word('bay.drawing'));
  const labels = createLabels(layout, size);
  const inset = createInset(layout, look);
  const hint = createHintLine();
  const paint = (): void => {
    renderer.render(scene.stage);
    warn();
  };
  const loop = createPaintLoop(scene.tick, paint, renderer.isBusy);
  const root = document.createElement('div');
  root.className = 'bay-view';
  /** What goes with the picture while it is moved. */
  const over = document.createElement('div');
  over.className = 'bay-over';
  over.append(twin.root, ...labels.elements);
  root.append(renderer.canvas, over, ...inset.elements, hint.element);
  host.append(root);

  const places: GearPlaces = {
    coupler: (hose) => scene.hoses[hose].couplerAt(),
    can: scene.can.canAt,
    joint: scene.can.jointAt,
    valve: scene.can.valveAt,
    dial: scene.can.dialAt,
    scale: scene.can.scaleAt,
  };
  const entries = (): readonly Entry[] => entriesOf(layout, frame, places, hands.hand(), hands.ready());
  /** Twin and words follow whatever changed in frame, hand or camera. */
  const telling = unhurried(() => {
    const list = entries();
    twin.show(list, camera());
    root.dataset.carrying = String(hands.hand().doing === 'carrying');
    warned = '';
    warn();
    labels.refresh(list, camera());
    inset.show(frame, camera());
  });
  const changed = (): void => {
    telling.now();
    loop.want();
  };
  let foreseen: readonly HoseDanger[] = [];
  let warned = '';
  /**
   * Zones and the line say what the hoses lie in, as soon as they do, and what a way that is looked at would lead to; whatever
   * else they hang on is told with the twin.
   */
  const warn = (): void => {
    const hose = carriedHose(hands);
    const hand = hands.hand();
    const met = Object.values(scene.hoses).flatMap((node) => node.dangers());
    const held = [...(hose ? scene.hoses[hose].dangers() : []), ...foreseen];
    const tugs = hand.doing === 'pressing' && hand.tugged !== undefined;
    const now = `${tugs} ${[...met, ...held].map(({ zone }) => zone).join()}`;
    if (now === warned) return;
    warned = now;
    hint.say(handHint(layout, frame, hand, hands.ready(), held, finger.matches));
    const shown = frame.keepClearShown || hose !== null;
    labels.keepClear(camera(), shown, new Set(shown ? [...met, ...foreseen].map(({ zone }) => zone) : []));
  };
  const hands = createHands({
    layout,
    scene,
    callbacks,
    frame: () => frame,
    mmPerPx: () => 1 / camera().scale,
    changed,
    moved: () => loop.want(),
    note: (at, text) => labels.note(at, text, camera()),
  });
  const whole = (px: number): number => Math.round(px * resolution) / resolution;
  /** The picture and what lies over it, moved and made larger without being painted anew. */
  const shift = (factor: number, [x, y]: PointMm): void => {
    const { scale, ...from } = camera();
    const near = scale * factor;
    scene.stage.scale.set(factor);
    scene.stage.position.set(whole(x), whole(y));
    over.style.transform =
      factor === 1 && x === 0 && y === 0 ? '' : `translate(${x}px, ${y}px) scale(${factor})`;
    inset.show(frame, { scale: near, x: from.x - x / near, y: from.y - y / near });
    loop.want();
  };
  const refit = (): void => {
    scene.refit(camera(), size(), resolution, theme === 'dark', viewport.canMove() ? MARGIN_PX : 0);
    shift(1, [0, 0]);
    inset.repaint();
    changed();
  };
  const resize = (): void => {
    if (!viewport.resized()) return;
    renderer.resize(size().width, size().height);
    refit();
    intoSight(document.activeElement);
  };
  const moveBy = ([x, y]: PointMm): void => {
    if (Math.hypot(...viewport.held(x, y)) < 1) return;
    viewport.move(x, y);
    refit();
  };
  /**
   * What a browser scrolls into sight when it gets focus: the picture is moved instead, where it can be, so that hands meet
   * what they see.
   */
  const scrolled = (): void => {
    const [x, y] = [root.scrollLeft, root.scrollTop];
    if (x === 0 && y === 0) return;
    root.scrollTo(0, 0);
    moveBy([-x, -y]);
  };
  root.addEventListener('scroll', scrolled);
  /** What keys have come to is seen: no browser scrolls to the left of a picture or from under a form. */
  const intoSight = (element: EventTarget | null): void => {
    if (!(element instanceof Element && twin.entryOf(element) && element.matches(':focus-visible'))) return;
    scrolled();
    moveBy(intoPicture(element, root));
    moveBy(fromUnder(element, root, viewport.held));
  };
  /** The name of what has focus or lies under the pointer; a way to lead a hose is shown dotted before it is taken. */
  const point = (entry: Entry | null): void => {
    labels.tag(entry, camera());
    const hose = carriedHose(hands) ?? hoseOfCoupler(hands.ready()?.item ?? '');
    const way = entry?.route && hose ? ledWay(layout, hose, entry.id, entry.route) : [];
    scene.rings.preview(way);
    foreseen = way.length > 1 ? dangersOf(layout, laidAlong(way, LED_STEPS)) : [];
    warn();
    loop.want();
  };

  /** How far the picture has been painted anew along the way it is being moved. */
  let panned: PointMm = [0, 0];
  const pointer = createPointer({
    root,
    hands,
    callbacks,
    frame: () => frame,
    camera,
    dialAt: scene.can.dialAt,
    point,
    entries,
    entryOf: twin.entryOf,
    focus: twin.focus,
    canPan: viewport.canMove,
    pan(dx, dy, done) {
      const [x, y] = viewport.held(dx - panned[0], dy - panned[1]);
      shift(1, [x, y]);
      if (!done && Math.max(Math.abs(x), Math.abs(y)) < MARGIN_PX) return;
      viewport.move(x, y);
      panned = done ? [0, 0] : [panned[0] + x, panned[1] + y];
      refit();
    },
    pinch(factor, about, by, done) {
      shift(factor, [about[0] * (1 - factor) + by[0], about[1] * (1 - factor) + by[1]]);
      if (!done) return;
      viewport.pinch(factor, about, by);
      refit();
    },
  });
  bindKeyboard({ layout, twin, hands, callbacks, frame: () => frame, entries });
  twin.root.addEventListener('focusin', (event) => {
    intoSight(event.target);
    point(twin.entryOf(event.target));
  });
  twin.root.addEventListener('focusout', ({ relatedTarget }) => {
    if (twin.entryOf(relatedTarget) === null) point(null);
  });
  const watcher = new ResizeObserver(resize);
  watcher.observe(host);
  scene.show(frame);
  refit();

  return {
    update(next) {
      frame = next;
      scene.show(frame);
      hands.follow(frame);
      telling.soon();
      loop.wantSoon();
    },
    leaveOne: loop.leaveOne,
    resize,
    setTheme(next) {
      theme = next;
      refit();
    },
    zoom(step) {
      viewport.zoom(step);
      refit();
    },
    focus: twin.focus,
    closeUp: look,
    dispose() {
      loop.stop();
      telling.stop();
      watcher.disconnect();
      pointer.dispose();
      root.remove();
      scene.stage.destroy({ children: true });
      renderer.desk.stop();
    },
  };
}

const prefersStill = (): boolean => window.matchMedia('(prefers-reduced-motion: reduce)').matches;

/** The hose whose coupler is in the hand. */
function carriedHose(hands: Hands): ReturnType<typeof hoseOfCoupler> {
  const hand = hands.hand();
  return hand.doing === 'carrying' ? hoseOfCoupler(hand.item) : null;
}
