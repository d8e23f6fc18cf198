/**
 * The drawn bay: pixi below, its twin of buttons above. It shows frames and reports what hands do; it decides nothing.
 * The picture is only painted when something changed, and while something moves.
 */
import './bay.css';
import type { Layout, PointMm } from '../layout/layout';
import { neighbour } from '../layout/order';
import { word } from '../words/words';
import type { BayCallbacks, BayOptions, BayTheme, BayView, CreateBay } from './bayApi';
import { type BayFrame, stillFrame } from './bayFrame';
import { type Camera, cameraFor, type HostSize, levelAfter, openingLevel, toBay } from './camera';
import { createHands } from './hands';
import { capId, couplerId, hoseOfCoupler } from './itemIds';
import { createPointer } from './pointer';
import { makeRenderer, suitableRenderer } from './renderer';
import { createScene } from './scene/bayScene';
import { type Entry, entriesOf, type GearPlaces } from './twin/entries';
import { type KeyAct, keyAct } from './twin/keys';
import { createLabels } from './twin/labels';
import { createTwin } from './twin/twin';

export type { BayCallbacks, BayOptions, BayTheme, BayView } from './bayApi';
export type { BayFrame, CanFrame, HoseFrame, PortFrame } from './bayFrame';
export { stillFrame } from './bayFrame';

/** More device pixels than this to a CSS pixel are not worth their time. */
const MOST_RESOLUTION = 2;
/** Pictures a second while something moves. */
const MOST_FRAMES_PER_S = 40;

export const createBay: CreateBay = async (host, layout, theme, callbacks, options = {}) => {
  const root = document.createElement('div');
  root.className = 'bay';
  const size = sizeOf(host);
  const resolution = Math.min(MOST_RESOLUTION, window.devicePixelRatio || 1);
  const renderer = await makeRenderer(
    options.renderer ?? suitableRenderer(),
    size.width,
    size.height,
    resolution,
  );
  host.append(root);
  return bindBay({ root, host, layout, theme, callbacks, options, renderer, resolution });
};

interface Parts {
  readonly root: HTMLElement;
  readonly host: HTMLElement;
  readonly layout: Layout;
  readonly theme: BayTheme;
  readonly callbacks: BayCallbacks;
  readonly options: BayOptions;
  readonly renderer: Awaited<ReturnType<typeof makeRenderer>>;
  readonly resolution: number;
}

function bindBay({
  root,
  host,
  layout,
  theme: firstTheme,
  callbacks,
  options,
  renderer,
  resolution,
}: Parts): BayView {
  const still = options.reducedMotion ?? window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  const scene = createScene(layout, still);
  const twin = createTwin(word('bay.drawing'));
  const labels = createLabels(layout);
  root.append(renderer.canvas as HTMLCanvasElement, twin.root, ...labels.elements);

  let frame: BayFrame = stillFrame(layout.ports.map((port) => port.id));
  let theme = firstTheme;
  let size = sizeOf(host);
  let level = openingLevel(size);
  let centre: PointMm | null = null;
  let camera: Camera = cameraFor(layout, size, level, centre);
  let dirty = true;
  let request = 0;
  let lastTime = 0;

  const places: GearPlaces = {
    coupler: (hose) => scene.hoses[hose].couplerAt(),
    get can() {
      return scene.can.canAt();
    },
    get valve() {
      return scene.can.valveAt();
    },
    get dial() {
      return scene.can.dialAt();
    },
  };
  const changed = (): void => {
    dirty = true;
    twin.show(entriesOf(layout, frame, places, hands.hand()), camera);
    const carrying = hands.hand().doing === 'carrying';
    root.dataset.carrying = String(carrying);
    labels.keepClear(camera, frame.keepClearShown || (carrying && isHose()));
    schedule();
  };
  const isHose = (): boolean => {
    const hand = hands.hand();
    return hand.doing === 'carrying' && hoseOfCoupler(hand.item) !== null;
  };
  const hands = createHands({
    layout,
    scene,
    callbacks,
    frame: () => frame,
    mmPerPx: () => 1 / camera.scale,
    changed,
  });

  const fit = (): void => {
    camera = cameraFor(layout, size, level, centre);
    scene.fit(camera, size, resolution, theme === 'dark');
    scene.stage.position.set(0, 0);
    changed();
  };
  const resize = (): void => {
    const now = sizeOf(host);
    if (now.width === size.width && now.height === size.height) return;
    if (openingLevel(now) !== openingLevel(size)) level = openingLevel(now);
    size = now;
    renderer.resize(Math.max(1, size.width), Math.max(1, size.height));
    fit();
  };

  const schedule = (): void => {
    if (request === 0) request = requestAnimationFrame(onFrame);
  };
  const onFrame = (time: number): void => {
    request = 0;
    const seconds = Math.min(0.1, (time - lastTime) / 1000);
    if (!dirty && seconds < 1 / MOST_FRAMES_PER_S) return schedule();
    lastTime = time;
    const moved = scene.tick(seconds);
    if (moved || dirty) renderer.render(scene.stage);
    dirty = false;
    if (moved) schedule();
  };

  const doKey = (act: KeyAct, entry: Entry): void => {
    switch (act.act) {
      case 'go':
        return goTo(entry, act.arrow);
      case 'look':
        return callbacks.onLook(entry.id);
      case 'take':
        hands.take(entry.id);
        return focusFirst();
      case 'put': {
        const hand = hands.hand();
        hands.put(entry.id, entry.route);
        if (hand.doing === 'carrying') twin.focus(hand.item);
        return;
      }
      case 'pick':
        return callbacks.onPick(entry.id);
      case 'cancel': {
        const hand = hands.hand();
        hands.cancel();
        if (hand.doing === 'carrying') twin.focus(hand.item);
        return;
      }
      case 'cap':
        if (isPort(entry.id)) callbacks.onPick(capId(entry.id));
        return;
      case 'coupler':
        return coupleHere(entry.id);
      case 'tilt':
        return callbacks.onTilt(act.degrees);
      case 'valve':
        return callbacks.onValve(act.sixteenths);
    }
  };
  const isPort = (id: string): boolean => layout.ports.some((port) => port.id === id);
  const focusFirst = (): void => {
    const [first] = entriesOf(layout, frame, places, hands.hand());
    if (first) twin.focus(first.key);
  };
  const goTo = (entry: Entry, arrow: 'up' | 'down' | 'left' | 'right'): void => {
    const entries = entriesOf(layout, frame, places, hands.hand());
    const stops = entries.map((e) => ({ id: e.key, kind: 'part' as const, at: middle(e), hit: e.hit }));
    const from = stops.find((stop) => stop.id === entry.key);
    const next = from && neighbour(stops, from, arrow);
    if (next) twin.focus(next.id);
  };
  /** K on a port: open or shut the coupler that stands there, or put on the loose one that fits. */
  const coupleHere = (id: string): void => {
    const onIt = frame.hoses.find((hose) => hose.port === id || couplerId(hose.id) === id);
    if (onIt?.port) return callbacks.onPick(couplerId(onIt.id));
    const fits = frame.hoses.find(
      (hose) => hose.port === null && callbacks.validTargets(couplerId(hose.id)).includes(id),
    );
    if (!fits || !isPort(id)) return;
    hands.take(couplerId(fits.id));
    hands.put(id);
    twin.focus(id);
  };

  const pointer = createPointer({
    root,
    hands,
    frame: () => frame,
    camera: () => camera,
    dialAt: () => scene.can.dialAt(),
    callbacks,
    tag: (entryAt) => labels.tag(entryAt, camera),
    entries: () => entriesOf(layout, frame, places, hands.hand()),
    canPan: () => level > 1,
    pan(dx, dy, done) {
      scene.stage.position.set(dx, dy);
      dirty = true;
      schedule();
      if (!done) return;
      const middlePx: PointMm = [size.width / 2 - dx, size.height / 2 - dy];
      centre = toBay(camera, middlePx);
      fit();
    },
  });
  const onKey = (event: KeyboardEvent): void => {
    const entry = twin.entryOf(event.target);
    if (!entry || event.ctrlKey || event.metaKey || event.altKey) return;
    const act = keyAct({ key: event.key, shift: event.shiftKey }, entry, hands.hand(), frame.can);
    if (!act) return;
    event.preventDefault();
    event.stopPropagation();
    doKey(act, entry);
  };
  const onFocus = (event: FocusEvent): void => {
    const entry = twin.entryOf(event.target);
    labels.tag(entry && event.type === 'focusin' ? entry : null, camera);
  };
  /** A button would click itself when Space is let go; the key has acted already. */
  const onKeyUp = (event: KeyboardEvent): void => {
    if (event.key === ' ' && twin.entryOf(event.target)) event.preventDefault();
  };
  twin.root.addEventListener('keydown', onKey);
  twin.root.addEventListener('keyup', onKeyUp);
  twin.root.addEventListener('focusin', onFocus);
  twin.root.addEventListener('focusout', onFocus);
  const watcher = new ResizeObserver(resize);
  watcher.observe(host);
  scene.show(frame);
  fit();

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
      fit();
    },
    zoom(step) {
      level = levelAfter(level, step);
      centre = null;
      fit();
    },
    focus: twin.focus,
    dispose() {
      cancelAnimationFrame(request);
      watcher.disconnect();
      pointer.dispose();
      root.remove();
      scene.stage.destroy({ children: true });
      renderer.destroy();
    },
  };
}

const middle = (entry: Entry): PointMm => [entry.hit[0] + entry.hit[2] / 2, entry.hit[1] + entry.hit[3] / 2];

function sizeOf(host: HTMLElement): HostSize {
  return { width: host.clientWidth, height: host.clientHeight };
}
