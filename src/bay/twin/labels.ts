/** Words over the picture: what is pointed at or focused, what the hatched zones are, why a coupler does not go on. */
import type { Hazard, Layout, PointMm, Zone } from '../../layout/layout';
import { type WordId, word } from '../../words/words';
import { type Camera, type HostSize, toScreen } from '../camera';
import type { Entry } from './entries';
import { type Box, placeClear } from './placeClear';

export interface Labels {
  readonly elements: readonly HTMLElement[];
  tag(entry: Entry | null, camera: Camera): void;
  /** Says the tag anew after a frame or a move of the camera; it goes with what it named. */
  refresh(entries: readonly Entry[], camera: Camera): void;
  /** `met`: zones a hose lies in now. */
  keepClear(camera: Camera, shown: boolean, met: ReadonlySet<string>): void;
  /** A sentence at a place for as long as it takes to read it. */
  note(at: PointMm, text: string, camera: Camera): void;
}

const KEEP_CLEAR: Readonly<Record<Hazard, WordId & `bay.keepClear.${Hazard}`>> = {
  fan: 'bay.keepClear.fan',
  belt: 'bay.keepClear.belt',
  heat: 'bay.keepClear.heat',
};

const MET: Readonly<Record<Hazard, WordId & `bay.met.${Hazard}`>> = {
  fan: 'bay.met.fan',
  belt: 'bay.met.belt',
  heat: 'bay.met.heat',
};
const NOTE_MS = 2600;

/** `size`: of the picture, known without asking the page, which would lay it out anew. */
export function createLabels(layout: Layout, size: () => HostSize): Labels {
  const tag = div('bay-tag');
  tag.hidden = true;
  tag.setAttribute('aria-hidden', 'true');
  const notes = layout.zones.flatMap((zone) =>
    zone.hazard ? [{ zone, element: div('bay-note'), hazard: zone.hazard }] : [],
  );
  for (const { element } of notes) element.hidden = true;
  const passing = div('bay-tag passing');
  passing.hidden = true;
  let passes = 0;
  let tagged: string | null = null;
  /** What was asked for last: where nothing changes nothing is measured. */
  let cleared: { readonly camera: Camera; readonly asked: string } | null = null;
  let placed: { readonly text: string; readonly hit: Entry['hit']; readonly camera: Camera } | null = null;
  /** Where it stands already nothing is measured: that would lay the page out anew for every move of the pointer. */
  const isPlaced = (text: string, { hit }: Entry, camera: Camera): boolean =>
    placed !== null &&
    placed.text === text &&
    placed.camera === camera &&
    placed.hit.every((value, i) => value === hit[i]);
  const say = (entry: Entry | null, camera: Camera): void => {
    tagged = entry?.key ?? null;
    // What has just been said at a fitting is read first.
    tag.hidden = entry === null || !passing.hidden;
    if (!entry) return;
    const text = entry.slider ? `${entry.label}: ${entry.slider.text}` : entry.label;
    if (isPlaced(text, entry, camera)) return;
    placed = { text, hit: entry.hit, camera };
    tag.textContent = text;
    placeTag(tag, entry, camera, size().width);
  };
  return {
    elements: [...notes.map((note) => note.element), tag, passing],
    tag: say,
    refresh(entries, camera) {
      if (tagged !== null) say(entries.find((entry) => entry.key === tagged) ?? null, camera);
    },
    keepClear(camera, shown, met) {
      const asked = `${shown} ${[...met]}`;
      if (cleared?.camera === camera && cleared.asked === asked) return;
      cleared = { camera, asked };
      const boxes: Box[] = [];
      for (const { zone, element, hazard } of notes) {
        const isMet = met.has(zone.id);
        element.hidden = !(shown || isMet) || !isSeen(zone, camera, size());
        if (element.hidden) continue;
        element.classList.toggle('met', isMet);
        const text = word((isMet ? MET : KEEP_CLEAR)[hazard]);
        if (element.textContent !== text) element.textContent = text;
        const [x, y, w, h] = zone.rect;
        const over = h > w || hasZoneBelow(layout, zone);
        const [left, top] = toScreen(camera, [x + w / 2, over ? y : y + h]);
        boxes.push(placeClear(element, [left, over ? top - 8 : top + 4], boxes));
      }
    },
    note(at, text, camera) {
      const [left, top] = toScreen(camera, at);
      passing.textContent = text;
      passing.style.left = `${left.toFixed(0)}px`;
      passing.style.top = `${(top + 64).toFixed(0)}px`;
      passing.hidden = false;
      tag.hidden = true;
      clearTimeout(passes);
      passes = window.setTimeout(() => {
        passing.hidden = true;
      }, NOTE_MS);
    },
  };
}

function isSeen({ rect: [x, y, w, h] }: Zone, camera: Camera, { width, height }: HostSize): boolean {
  const [left, top] = toScreen(camera, [x, y]);
  const [right, bottom] = toScreen(camera, [x + w, y + h]);
  return right > 0 && bottom > 0 && left < width && top < height;
}

/** A label goes over the upper edge of an upright zone and of one with another below, else over the lower edge. */
function hasZoneBelow(layout: Layout, { id, rect: [x, y, w, h] }: Zone): boolean {
  return layout.zones.some(
    ({ id: other, hazard, rect: [ox, oy, ow] }) =>
      hazard && other !== id && oy > y && oy < y + h + 60 && ox < x + w && ox + ow > x,
  );
}

/** How high a tag is: characters a line, height of a line and of its edges, px; reckoned, as measuring costs a layout. */
const TAG_CHARACTERS = 30;
const TAG_LINE_PX = 18;
const TAG_EDGES_PX = 14;
/** Between a tag and what it names. */
const OFF_PX = 10;
/** The line on what is in the hand stands above. */
const UNDER_LINE_PX = 60;

/** Above what it names, or below it where there is no room for it under the line; never over the sides. */
function placeTag(tag: HTMLElement, entry: Entry, camera: Camera, width: number): void {
  const [x, y, w, h] = entry.hit;
  const [left, top] = toScreen(camera, [x + w / 2, y]);
  const [, bottom] = toScreen(camera, [x, y + h]);
  const half = Math.min(130, width * 0.3);
  tag.style.left = `${Math.max(half + 8, Math.min(width - half - 8, left)).toFixed(0)}px`;
  const tall = Math.ceil((tag.textContent?.length ?? 0) / TAG_CHARACTERS) * TAG_LINE_PX + TAG_EDGES_PX;
  const isAbove = top - OFF_PX - tall >= UNDER_LINE_PX;
  tag.style.top = `${(isAbove ? top - OFF_PX : bottom + OFF_PX + tall).toFixed(0)}px`;
}

function div(className: string): HTMLElement {
  const element = document.createElement('div');
  element.className = className;
  return element;
}
