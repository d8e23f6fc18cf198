/**
 * The look-closer inset over the bay: where a clutch stands edge-on its cue is small, so a round lens button beside it
 * opens a card that shows it face-on, live, over the quiet engine. Closed, only the lens and its leader are there.
 */
import type { Layout, PointMm } from '../../layout/layout';
import { word } from '../../words/words';
import type { BayFrame } from '../bayFrame';
import { type Camera, toScreen } from '../camera';
import { CLUTCH_FACE } from '../closeUp';
import { createLeader } from './leader';

export interface Inset {
  readonly elements: readonly Element[];
  show(frame: BayFrame, camera: Camera): void;
  /** Size or theme changed: what was drawn is no good any more. */
  repaint(): void;
}

export type Picture = (targetId: string, width: number, height: number) => HTMLCanvasElement | null;

/** From the middle of the edge-on wheel to the lens, and to the card's top left, mm. */
const LENS_FROM_WHEEL: PointMm = [96, -118];
const CARD_FROM_WHEEL: PointMm = [112, -366];
const CARD_MM = 400;
const LEAST_CARD_PX = 168;
const MOST_CARD_PX = 320;
const PICTURE_SHARE = 0.72;

/** No elements where no clutch stands edge-on. */
export function createInset(layout: Layout, picture: Picture): Inset {
  const part = layout.parts.find((one) => one.kind === 'compressor-side');
  if (!part) return { elements: [], show: () => undefined, repaint: () => undefined };
  const [lens, card] = [document.createElement('button'), document.createElement('section')];
  const [shut, place, note] = [
    document.createElement('button'),
    document.createElement('div'),
    document.createElement('p'),
  ];
  lens.className = 'bay-lens';
  card.className = 'bay-inset';
  shut.className = 'bay-inset-shut';
  lens.type = 'button';
  shut.type = 'button';
  lens.setAttribute('aria-label', word('bay.inset.open'));
  shut.setAttribute('aria-label', word('bay.inset.close'));
  card.setAttribute('aria-label', word('bay.inset.clutch'));
  card.hidden = true;
  const leader = createLeader();
  const head = document.createElement('h3');
  head.textContent = word('bay.inset.clutch');
  card.append(head, shut, place, note);

  let shown = '';
  let latest: { readonly frame: BayFrame; readonly camera: Camera } | null = null;
  const refresh = (): void => {
    if (!latest) return;
    const { frame, camera } = latest;
    const wheel = toScreen(camera, part.at);
    const lensAt = toScreen(camera, [part.at[0] + LENS_FROM_WHEEL[0], part.at[1] + LENS_FROM_WHEEL[1]]);
    at(lens, lensAt);
    lens.hidden = !card.hidden;
    leader.show(wheel, lensAt);
    if (card.hidden) return;
    const side = Math.max(LEAST_CARD_PX, Math.min(MOST_CARD_PX, CARD_MM * camera.scale));
    const [x, y] = toScreen(camera, [part.at[0] + CARD_FROM_WHEEL[0], part.at[1] + CARD_FROM_WHEEL[1]]);
    card.style.width = `${side.toFixed(0)}px`;
    const corner = inside(card, side, [x, y]);
    at(card, corner);
    leader.show(wheel, [corner[0] + LEADER_IN_PX, corner[1] + side * 0.5]);
    const key = `${frame.clutchEngaged}:${frame.stains[part.id] ?? 0}:${side}`;
    if (key === shown) return;
    shown = key;
    const drawn = picture(CLUTCH_FACE, side - 4, side * PICTURE_SHARE);
    if (drawn) {
      drawn.style.width = '100%';
      place.replaceChildren(drawn);
    }
    note.textContent = word(frame.clutchEngaged ? 'bay.inset.engaged' : 'bay.inset.apart');
  };
  const open = (isOpen: boolean): void => {
    card.hidden = !isOpen;
    shown = '';
    refresh();
    (isOpen ? shut : lens).focus({ preventScroll: true });
  };
  lens.addEventListener('click', () => open(true));
  shut.addEventListener('click', () => open(false));
  card.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    open(false);
  });
  // The hands below must not see presses that are meant for the card.
  for (const element of [lens, card])
    for (const name of ['pointerdown', 'touchend'])
      element.addEventListener(name, (event) => event.stopPropagation());
  return {
    elements: [leader.element, lens, card],
    show(frame, camera) {
      latest = { frame, camera };
      refresh();
    },
    repaint() {
      shown = '';
    },
  };
}

/** Kept inside its host, and below what stands in its upper corners where there is height to spare. */
function inside(card: HTMLElement, side: number, [x, y]: PointMm): PointMm {
  const [width, height] = [card.parentElement?.clientWidth ?? 0, card.parentElement?.clientHeight ?? 0];
  const cardHeight = side * PICTURE_SHARE + FRAME_PX;
  const least = height > cardHeight + 120 ? 56 : 4;
  return [Math.max(4, Math.min(width - side - 8, x)), Math.max(least, Math.min(height - cardHeight - 4, y))];
}

/** How far a leader runs under the card it comes from. */
const LEADER_IN_PX = 6;

/** Head and note of the card. */
const FRAME_PX = 84;

function at(element: HTMLElement, [x, y]: PointMm): void {
  element.style.left = `${x.toFixed(0)}px`;
  element.style.top = `${y.toFixed(0)}px`;
}
