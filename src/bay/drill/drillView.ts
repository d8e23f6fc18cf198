/**
 * The drill's bay on a sheet that scrolls: a canvas of the bay, a canvas of marks over it, and a button for every line,
 * part, port and panel. A press anywhere finds the nearest of them. It shows; what a press means is the page's.
 */
import './drill.css';
import { courseOf, nearestStation, stationAt } from '../../layout/course';
import type { Layout, PointMm, RectMm } from '../../layout/layout';
import { type Arrow, neighbour } from '../../layout/order';
import type { PortFrame } from '../bayFrame';
import { paint } from '../drawing/painter';
import { type Palette, paletteOf } from '../drawing/palette';
import { loadParts } from '../drawing/parts/partBook';
import type { Drawing } from '../drawing/record';
import { type DrillMarks, drillMarks, drillPicture } from './drillPicture';

export interface DrillThing {
  readonly id: string;
  readonly name: string;
}

export interface DrillShown {
  /** Without the panels that are lifted. */
  readonly layout: Layout;
  readonly ports: Readonly<Record<string, PortFrame>>;
  readonly covered: ReadonlySet<string>;
  readonly things: readonly DrillThing[];
  readonly marks: DrillMarks;
  /** What is brought into sight first where only a part of the bay is. */
  readonly first: string;
}

export type DrillZoom = 'nearer' | 'farther' | 'whole';

export interface DrillView {
  show(shown: DrillShown): void;
  setDark(dark: boolean): void;
  zoom(step: DrillZoom): void;
  focus(id: string): void;
  dispose(): void;
}

const ZOOMS = [1, 1.5, 2.2, 3.2] as const;
const MOST_RESOLUTION = 2;
/** The car is drawn at least half as far past its view on every side. */
const MOST_PAST_MM = 560;
/** A host narrower than this opens near, on the first port. */
const PHONE_PX = 560;
const PHONE_ZOOM = 2;
const LEAST_REACH_PX = 22;
const ARROWS: Readonly<Record<string, Arrow>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
};

interface Spot {
  readonly id: string;
  readonly kind: 'line' | 'part' | 'port';
  readonly at: PointMm;
  readonly hit: RectMm;
}

export function createDrillView(host: HTMLElement, label: string, onPress: (id: string) => void): DrillView {
  const [root, sheet] = [element('div', 'drill-scroll'), element('div', 'drill-sheet')];
  const [base, over] = [document.createElement('canvas'), document.createElement('canvas')];
  const list = element('div', 'drill-things');
  list.setAttribute('role', 'group');
  list.setAttribute('aria-label', label);
  sheet.append(base, over, list);
  root.append(sheet);
  host.append(root);
  let shown: DrillShown | null = null;
  let painted: Layout | null = null;
  let isReady = false;
  let bayId = '';
  let spots: readonly Spot[] = [];
  let zoom = 0;
  let dark = false;
  const fit = (): number => {
    const [, , w, h] = shown?.layout.view ?? [0, 0, 1, 1];
    return Math.max(0.05, Math.min(host.clientWidth / w, host.clientHeight / h));
  };
  const scale = (): number => fit() * ZOOMS[zoom];
  /** What the sheet shows: the layout's view, and past it as much of the car as fills the host. */
  const seen = (): RectMm => {
    const [x, y, w, h] = shown?.layout.view ?? [0, 0, 1, 1];
    const more = (size: number, px: number): number => Math.min(MOST_PAST_MM, Math.max(0, px / fit() - size));
    const [dx, dy] = [more(w, host.clientWidth), more(h, host.clientHeight)];
    return [x - dx / 2, y - dy / 2, w + dx, h + dy];
  };
  const palette = (): Palette => paletteOf(dark, shown?.layout.paint ?? 'sage');

  const draw = (canvas: HTMLCanvasElement, drawing: Drawing): void => {
    const context = canvas.getContext('2d');
    if (!context || !shown) return;
    const k = scale() * resolution();
    const [x, y, w, h] = seen();
    canvas.width = Math.max(1, Math.round(w * k));
    canvas.height = Math.max(1, Math.round(h * k));
    context.setTransform(k, 0, 0, k, -x * k, -y * k);
    paint(context, drawing, palette());
  };
  const paintBase = (): void => {
    if (!shown || !isReady) return;
    painted = shown.layout;
    draw(base, drillPicture(shown.layout, shown.ports, shown.covered, dark));
  };
  const paintMarks = (): void => {
    if (shown && isReady) draw(over, drillMarks(shown.layout, shown.ports, shown.covered, shown.marks));
  };
  const place = (): void => {
    if (!shown) return;
    const k = scale();
    const [x, y, w, h] = seen();
    sheet.style.width = `${Math.round(w * k)}px`;
    sheet.style.height = `${Math.round(h * k)}px`;
    for (const button of list.children) {
      const spot = spots.find(({ id }) => id === (button as HTMLElement).dataset.id);
      if (spot) put(button as HTMLElement, spot, k, x, y);
    }
  };
  const refit = (): void => {
    place();
    paintBase();
    paintMarks();
  };
  const centre = ([px, py]: PointMm): void => {
    const k = scale();
    const [x, y] = seen();
    root.scrollTo((px - x) * k - root.clientWidth / 2, (py - y) * k - root.clientHeight / 2);
  };
  const setZoom = (next: number): void => {
    const k = scale();
    const [x, y] = seen();
    const middle: PointMm = [
      (root.scrollLeft + root.clientWidth / 2) / k + x,
      (root.scrollTop + root.clientHeight / 2) / k + y,
    ];
    zoom = Math.max(0, Math.min(ZOOMS.length - 1, next));
    refit();
    centre(middle);
  };
  const press = (event: MouseEvent): void => {
    const button = (event.target as HTMLElement).closest('button');
    if (event.detail === 0 && button?.dataset.id !== undefined) {
      onPress(button.dataset.id);
      return;
    }
    const box = sheet.getBoundingClientRect();
    const [x, y] = seen();
    const k = scale();
    const found =
      shown &&
      under(shown, spots, [(event.clientX - box.left) / k + x, (event.clientY - box.top) / k + y], k);
    if (!found) return;
    focus(found);
    onPress(found);
  };
  const focus = (id: string): void =>
    list.querySelector<HTMLElement>(`[data-id="${id}"]`)?.focus({ preventScroll: zoom === 0 });
  const onKey = (event: KeyboardEvent): void => {
    const arrow = ARROWS[event.key];
    const from = spots.find(({ id }) => id === (event.target as HTMLElement).dataset.id);
    if (!arrow || !from || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const next = neighbour(spots, from, arrow);
    if (next) focus(next.id);
  };
  sheet.addEventListener('click', press);
  list.addEventListener('keydown', onKey);
  const watcher = new ResizeObserver(refit);
  watcher.observe(host);
  void loadParts('drill').then(() => {
    isReady = true;
    refit();
  });

  return {
    show(next) {
      const isNew = bayId !== next.layout.id;
      const isSame = painted === next.layout;
      shown = next;
      bayId = next.layout.id;
      spots = spotsOf(next);
      fill(list, next, spots);
      if (isNew) zoom = host.clientWidth < PHONE_PX ? PHONE_ZOOM : 0;
      place();
      if (!isSame) paintBase();
      paintMarks();
      const first = next.layout.ports.find(({ id }) => id === next.first);
      if (isNew && zoom > 0 && first) centre(first.at);
    },
    setDark(next) {
      dark = next;
      refit();
    },
    zoom: (step) => setZoom(step === 'whole' ? 0 : zoom + (step === 'nearer' ? 1 : -1)),
    focus,
    dispose() {
      watcher.disconnect();
      root.remove();
    },
  };
}

const resolution = (): number => Math.min(MOST_RESOLUTION, devicePixelRatio || 1);

function element(tag: 'div', className: string): HTMLElement {
  const made = document.createElement(tag);
  made.className = className;
  return made;
}

/** One button a thing, kept where it is already there so that focus stays. */
function fill(list: HTMLElement, { things, marks }: DrillShown, spots: readonly Spot[]): void {
  const known = new Map(
    [...list.children].map((one) => [(one as HTMLElement).dataset.id, one as HTMLElement]),
  );
  const buttons = things
    .filter(({ id }) => spots.some((spot) => spot.id === id))
    .map(({ id, name }) => {
      const button = known.get(id) ?? document.createElement('button');
      button.setAttribute('type', 'button');
      button.dataset.id = id;
      button.setAttribute('aria-label', name);
      button.setAttribute('aria-pressed', String(marks.traced.includes(id)));
      return button;
    });
  if (buttons.length !== list.children.length || buttons.some((one, i) => one !== list.children[i]))
    list.replaceChildren(...buttons);
}

function put(button: HTMLElement, { hit, at, kind }: Spot, k: number, x: number, y: number): void {
  const least = 2 * LEAST_REACH_PX;
  const w = kind === 'part' ? Math.max(least, hit[2] * k) : least;
  const h = kind === 'part' ? Math.max(least, hit[3] * k) : least;
  button.style.left = `${Math.round((at[0] - x) * k - w / 2)}px`;
  button.style.top = `${Math.round((at[1] - y) * k - h / 2)}px`;
  button.style.width = `${Math.round(w)}px`;
  button.style.height = `${Math.round(h)}px`;
}

function spotsOf({ layout, things }: DrillShown): Spot[] {
  return things.flatMap(({ id }): Spot[] => {
    const port = layout.ports.find((one) => one.id === id);
    if (port) return [{ id, kind: 'port', at: port.at, hit: [port.at[0] - 24, port.at[1] - 24, 48, 48] }];
    const part = layout.parts.find((one) => one.id === id);
    if (part?.hit) {
      const [x, y, w, h] = part.hit;
      return [{ id, kind: 'part', at: [x + w / 2, y + h / 2], hit: part.hit }];
    }
    const line = layout.lines.find((one) => one.id === id);
    if (!line) return [];
    const course = courseOf(line.way, line.fillet);
    const { x, y } = stationAt(course, course.lengthMm / 2);
    return [{ id, kind: 'line', at: [x, y], hit: [x - 20, y - 20, 40, 40] }];
  });
}

/** What a press means: a panel, a port, a small part, the nearest line, a large part. */
function under({ layout }: DrillShown, spots: readonly Spot[], [px, py]: PointMm, k: number): string | null {
  const within = ({ hit: [x, y, w, h] }: Spot, room: number): boolean =>
    px >= x - room && px <= x + w + room && py >= y - room && py <= y + h + room;
  const reach = Math.max(14, LEAST_REACH_PX / k / 1.4);
  const cover = spots.find(
    (spot) => layout.parts.some(({ id, name }) => id === spot.id && name === 'cover') && within(spot, 0),
  );
  if (cover) return cover.id;
  const port = spots.find((spot) => spot.kind === 'port' && within(spot, Math.max(0, reach - 20)));
  if (port) return port.id;
  const small = spots.find((spot) => spot.kind === 'part' && spot.hit[2] <= SMALL_MM && within(spot, -6));
  if (small) return small.id;
  let best: { readonly id: string; readonly awayMm: number } | null = null;
  for (const spot of spots) {
    const line = spot.kind === 'line' ? layout.lines.find(({ id }) => id === spot.id) : undefined;
    if (!line) continue;
    const awayMm = nearestStation(courseOf(line.way, line.fillet), [px, py]).awayMm - line.diameterMm / 2;
    if (awayMm <= reach && (!best || awayMm < best.awayMm)) best = { id: spot.id, awayMm };
  }
  return best?.id ?? spots.find((spot) => spot.kind === 'part' && within(spot, 0))?.id ?? null;
}

/** Joints are this small. */
const SMALL_MM = 60;
