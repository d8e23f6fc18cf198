/**
 * The pointer in the bay: pressing, dragging, turning the can by its dial, its valve by a sideways drag, moving the
 * picture when it is drawn near, two fingers that spread or close to bring it nearer or farther. Esc gives up whatever is
 * held. Clicks that come from a key or a screen reader have no press of their own and are told
 * apart by their detail of 0.
 */
import type { PointMm } from '../layout/layout';
import type { BayCallbacks } from './bayApi';
import type { BayFrame } from './bayFrame';
import { type Camera, toBay } from './camera';
import type { Hands } from './hands';
import { CAN_TILT, CAN_VALVE } from './itemIds';
import type { Entry } from './twin/entries';

export interface PointerHost {
  readonly root: HTMLElement;
  readonly hands: Hands;
  readonly callbacks: BayCallbacks;
  frame(): BayFrame;
  camera(): Camera;
  dialAt(): PointMm | null;
  /** What the pointer is over, for its name. */
  point(entry: Entry | null): void;
  entries(): readonly Entry[];
  /** The thing an element of the twin stands for. */
  entryOf(element: EventTarget | null): Entry | null;
  /** Gives keyboard focus to a thing of the twin. */
  focus(key: string): void;
  canPan(): boolean;
  pan(dx: number, dy: number, done: boolean): void;
  /** Two fingers: the picture is `factor` times as large about a point, and moved. */
  pinch(factor: number, about: PointMm, by: PointMm, done: boolean): void;
}

type Doing =
  | { readonly kind: 'hand' }
  | { readonly kind: 'tilt'; askedDeg: number }
  | { readonly kind: 'valve'; readonly x: number; readonly from: number; readonly turned: boolean }
  | { readonly kind: 'pan'; readonly x: number; readonly y: number; readonly far: boolean }
  | { readonly kind: 'pinch'; readonly from: Spread; readonly by: Spread };

/** Two fingers: the point between them and how far they are apart, pixels. */
interface Spread {
  readonly at: PointMm;
  readonly apart: number;
}

function spreadOf([[ax, ay], [bx, by]]: readonly PointMm[]): Spread {
  return { at: [(ax + bx) / 2, (ay + by) / 2], apart: Math.max(1, Math.hypot(ax - bx, ay - by)) };
}

/** Sideways pixels for a sixteenth of a turn. */
const VALVE_PX = 9;
const TILT_STEP_DEG = 5;
/** A finger hides what it holds: a held thing is lifted this far above it. */
const TOUCH_LIFT_PX = 40;
const PAN_PX = 8;
/** How long the place of the bay in the page is taken to be what it was. */
const BOX_MS = 250;

export function createPointer(host: PointerHost): { dispose(): void } {
  const { root, hands, callbacks } = host;
  let doing: Doing | null = null;
  /** The pointer that does it; another finger or a palm on the glass neither moves nor lets go of it. */
  let doer: number | null = null;
  const fingers = new Map<number, PointMm>();

  let box = root.getBoundingClientRect();
  let boxAtMs = Number.NEGATIVE_INFINITY;
  /** Where the bay stands is asked seldom, as it lays the page out anew; a press asks always. */
  const pixels = (event: PointerEvent): PointMm => {
    if (event.type === 'pointerdown' || event.timeStamp - boxAtMs > BOX_MS) {
      box = root.getBoundingClientRect();
      boxAtMs = event.timeStamp;
    }
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const point = (event: PointerEvent): PointMm => {
    const [x, y] = pixels(event);
    const lifted = event.pointerType === 'touch' && hands.hand().doing === 'carrying' ? TOUCH_LIFT_PX : 0;
    return toBay(host.camera(), [x, y - lifted]);
  };
  const finger = (event: PointerEvent): PointMm | null =>
    event.pointerType === 'touch' && hands.hand().doing === 'carrying'
      ? toBay(host.camera(), pixels(event))
      : null;
  const down = (event: PointerEvent): void => {
    if (event.pointerType === 'touch') fingers.set(event.pointerId, pixels(event));
    if (fingers.size === 2 && hands.hand().doing !== 'carrying') startPinch(event);
    if (event.button !== 0 || doing !== null) return;
    const at = point(event);
    const under = hands.under(at);
    root.setPointerCapture(event.pointerId);
    doer = event.pointerId;
    const pressed = entryAt(at);
    if (pressed) host.focus(pressed.key);
    doing = startOf(event, under?.id ?? null, under?.takeable ?? false);
    if (doing.kind === 'tilt') tilt(at, doing);
    if (doing.kind === 'hand' || doing.kind === 'pan') hands.down(at);
  };
  const isOther = (event: PointerEvent): boolean =>
    doing !== null && doing.kind !== 'pinch' && event.pointerId !== doer;
  const startPinch = (event: PointerEvent): void => {
    hands.cancel();
    dropPan();
    root.setPointerCapture(event.pointerId);
    const from = spreadOf([...fingers.values()]);
    doing = { kind: 'pinch', from, by: from };
  };
  const startOf = (event: PointerEvent, id: string | null, takeable: boolean): Doing => {
    const [x, y] = pixels(event);
    if (id === CAN_TILT) return { kind: 'tilt', askedDeg: host.frame().can?.tiltDeg ?? 0 };
    if (id === CAN_VALVE)
      return { kind: 'valve', x, from: host.frame().can?.valveSixteenths ?? 0, turned: false };
    if (!takeable && host.canPan() && hands.hand().doing !== 'carrying')
      return { kind: 'pan', x, y, far: false };
    return { kind: 'hand' };
  };
  const move = (event: PointerEvent): void => {
    if (fingers.has(event.pointerId)) fingers.set(event.pointerId, pixels(event));
    if (doing?.kind === 'pinch') {
      if (fingers.size === 2) doing = { ...doing, by: spreadOf([...fingers.values()]) };
      pinch(doing, false);
      return;
    }
    if (isOther(event)) return;
    const at = point(event);
    if (doing?.kind === 'tilt') tilt(at, doing);
    if (doing?.kind === 'valve') valve(event, doing);
    if (doing?.kind === 'pan') pan(event, doing, false);
    if (doing?.kind === 'hand' || hands.hand().doing === 'carrying')
      hands.move(at, event.timeStamp / 1000, finger(event));
    if (doing === null) host.point(entryAt(at));
  };
  const up = (event: PointerEvent): void => {
    fingers.delete(event.pointerId);
    if (isOther(event)) return;
    if (doing?.kind === 'pinch' && fingers.size > 0) {
      settlePinch(doing);
      return;
    }
    const was = doing;
    const { item } = { item: null, ...hands.hand() };
    doing = null;
    if (was?.kind === 'pinch') pinch(was, true);
    if (was?.kind === 'valve' && !was.turned) callbacks.onPick(CAN_VALVE);
    if (was?.kind === 'pan' && was.far) {
      hands.cancel();
      pan(event, was, true);
    } else if (was?.kind === 'hand' || was?.kind === 'pan') hands.up(point(event));
    if (item !== null && hands.hand().doing === 'nothing') host.focus(item);
  };
  const leave = (): void => host.point(null);
  const abort = (event: PointerEvent): void => {
    fingers.delete(event.pointerId);
    if (isOther(event)) return;
    if (doing?.kind === 'pinch') pinch(doing, true);
    dropPan();
    doing = null;
    hands.cancel();
  };
  /** One finger less: what they did stays, and those that are left go on from where they are. */
  const settlePinch = (was: Extract<Doing, { readonly kind: 'pinch' }>): void => {
    pinch(was, true);
    const from = fingers.size === 2 ? spreadOf([...fingers.values()]) : was.by;
    doing = { kind: 'pinch', from, by: from };
  };
  /** A picture on its way goes back where it stood. */
  const dropPan = (): void => {
    if (doing?.kind === 'pan' && doing.far) host.pan(0, 0, true);
  };
  const pinch = ({ from, by }: Extract<Doing, { readonly kind: 'pinch' }>, done: boolean): void => {
    const moved: PointMm = [by.at[0] - from.at[0], by.at[1] - from.at[1]];
    host.pinch(by.apart / from.apart, from.at, moved, done);
  };
  /** What is held goes back where it was, wherever the focus is; the press that holds it counts no more. A name goes too. */
  const giveUp = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    host.point(null);
    const hand = hands.hand();
    const isTugged = hand.doing === 'pressing' && hand.tugged !== undefined;
    if (hand.doing !== 'carrying' && !isTugged) return;
    event.preventDefault();
    doing = null;
    hands.cancel();
    if (hand.doing === 'carrying') host.focus(hand.item);
  };

  /** Each step is asked for once: the frame that shows it comes later. */
  const tilt = ([x, y]: PointMm, turning: Extract<Doing, { readonly kind: 'tilt' }>): void => {
    const dial = host.dialAt();
    if (!dial) return;
    const degrees = Math.abs((Math.atan2(x - dial[0], dial[1] - y) * 180) / Math.PI);
    const stepped = Math.round(degrees / TILT_STEP_DEG) * TILT_STEP_DEG;
    if (stepped === turning.askedDeg) return;
    turning.askedDeg = stepped;
    callbacks.onTilt(stepped);
  };
  const valve = (event: PointerEvent, at: Extract<Doing, { readonly kind: 'valve' }>): void => {
    const turn = Math.max(0, Math.min(16, at.from + Math.round((pixels(event)[0] - at.x) / VALVE_PX)));
    if (turn === host.frame().can?.valveSixteenths) return;
    doing = { ...at, turned: true };
    callbacks.onValve(turn);
  };
  const pan = (event: PointerEvent, at: Extract<Doing, { readonly kind: 'pan' }>, done: boolean): void => {
    const [x, y] = pixels(event);
    const far = at.far || Math.abs(x - at.x) + Math.abs(y - at.y) > PAN_PX;
    if (!done) doing = { ...at, far };
    if (far) host.pan(x - at.x, y - at.y, done);
  };
  const entryAt = (at: PointMm): Entry | null => {
    const under = hands.under(at);
    const puts = hands.hand().doing === 'carrying';
    return (under && host.entries().find((entry) => entry.id === under.id && (puts || !entry.puts))) ?? null;
  };
  /** A press made by key or screen reader: the same as a click of the hand on the middle of the thing. */
  const click = (event: MouseEvent): void => {
    const entry = event.detail === 0 ? host.entryOf(event.target) : null;
    if (!entry) return;
    if (entry.puts) hands.put(entry.id, entry.route);
    else if (entry.takeable && !standsOnPort(entry.id)) hands.take(entry.id);
    else callbacks.onPick(entry.id);
  };
  const standsOnPort = (id: string): boolean =>
    host.frame().hoses.some((hose) => `coupler:${hose.id}` === id && hose.port !== null);

  const listeners: readonly (readonly [string, (event: never) => void])[] = [
    ['pointerdown', down],
    ['pointermove', move],
    ['pointerup', up],
    ['pointercancel', abort],
    ['pointerleave', leave],
    ['click', click],
    // Focus goes to what was pressed, not to the surface the pointer is captured by.
    ['mousedown', (event: MouseEvent) => event.preventDefault()],
    // A tap is done when the finger lifts: the click made up after it would land on whatever has opened under it.
    ['touchend', (event: TouchEvent) => event.cancelable && event.preventDefault()],
  ];
  for (const [name, listener] of listeners) root.addEventListener(name, listener as EventListener);
  document.addEventListener('keydown', giveUp);
  return {
    dispose() {
      document.removeEventListener('keydown', giveUp);
      for (const [name, listener] of listeners) root.removeEventListener(name, listener as EventListener);
    },
  };
}
