/**
 * Hands at work: turns pointer and key into hand events, keeps the hand, moves what it carries in the scene, and tells
 * the page what came of it. The only place where gesture, scene and intents meet.
 */
import type { Layout, PointMm } from '../layout/layout';
import { defaultRoute, zonesAlong } from '../layout/zones';
import { word } from '../words/words';
import type { BayCallbacks } from './bayApi';
import type { BayFrame } from './bayFrame';
import { MOUTH_MM } from './drawing/gear/coupler';
import { gearOf } from './gearOf';
import {
  emptyHand,
  type Hand,
  type HandEvent,
  handStep,
  type Intent,
  type Under,
} from './gesture/handGesture';
import { isShaken, type Shaking, shakeOn, startShaking } from './gesture/shaking';
import { dropTarget, type Scene, underPointer } from './gesture/underPointer';
import { leadingEnd } from './hose/leadingEnd';
import { CAN, hoseOfCoupler, inletOfEnd, MAT, SCALE } from './itemIds';
import { ringsOf } from './ringsOf';
import type { BayScene } from './scene/bayScene';

export interface Hands {
  hand(): Hand;
  /** What lies under a point now. */
  under(at: PointMm): Under | null;
  down(at: PointMm): void;
  /** The pointer is at a point at a time in seconds; a finger hides what it holds and stands apart from it. */
  move(at: PointMm, seconds: number, finger: PointMm | null): void;
  up(at: PointMm): void;
  take(itemId: string): void;
  /** Puts down what is held, in the hand or by the page; a coupler is led along the route given, or the usual one. */
  put(targetId: string, route?: readonly string[]): void;
  /** What the page says is held: the bay's hand is free, but a press on a place puts it there. */
  ready(): Ready | null;
  cancel(): void;
  /** Heeds what the frame says is held. */
  follow(frame: BayFrame): void;
}

/** A thing and where it may go. */
export interface Ready {
  readonly item: string;
  readonly valid: readonly string[];
}

export interface HandsHost {
  readonly layout: Layout;
  readonly scene: BayScene;
  readonly callbacks: BayCallbacks;
  frame(): BayFrame;
  mmPerPx(): number;
  /** The picture or the twin changed. */
  changed(): void;
  /** What is held moved, and nothing else. */
  moved(): void;
  /** Says at a fitting why a coupler does not go on. */
  note(at: PointMm, text: string): void;
}

type Carrying = Extract<Hand, { readonly doing: 'carrying' }>;

/** A coupler about to go on is held this far over its fitting. */
const OVER_MM = 10;
/** What is taken by a key is lifted this far off where it lay. */
const LIFT_MM = 40;

export function createHands(host: HandsHost): Hands {
  const { layout, scene, callbacks } = host;
  let hand: Hand = emptyHand();
  let hostHeld: string | null = null;
  let shaking: Shaking | null = null;
  let wasShaken = false;
  const valid = (item: string): readonly string[] => callbacks.validTargets(item);
  const readyNow = (): Ready | null =>
    hostHeld === null ? null : { item: hostHeld, valid: valid(hostHeld) };
  const sceneNow = (): Scene => ({
    layout,
    gear: gearOf(layout, scene, host.frame()),
    mmPerPx: host.mmPerPx(),
  });

  const step = (event: HandEvent, route?: readonly string[]): void => {
    const before = hand;
    const result = handStep(hand, event);
    hand = result.hand;
    showHand(before);
    const led = route ?? (before.doing === 'carrying' && before.dragged ? null : undefined);
    for (const intent of result.intents) act(intent, result.intents, led);
    if (event.kind === 'move' && hand.doing === before.doing) host.moved();
    else host.changed();
  };

  const showHand = (before: Hand): void => {
    const carried = hand.doing === 'carrying' ? hand : null;
    const hose = carried && hoseOfCoupler(carried.item);
    const over = carried?.at ? dropTarget(sceneNow(), carried.at, carried.valid) : null;
    scene.setCarryingHose(hose !== null);
    if (carried?.at && hose) scene.hoses[hose].carry(heldOver(carried, over) ?? carried.at);
    if (carried?.at && carried.item === CAN) scene.can.carry(carried.at);
    if (carried?.at) carryEnd(carried.item, carried.at);
    if (carried && !carried.at && before.doing !== 'carrying') lift(carried.item);
    if (!carried && before.doing === 'carrying') settle(before.item);
    showTug(before);
    if (carried || before.doing === 'carrying')
      scene.rings.set(ringsOf(sceneNow(), carried ?? readyNow(), over));
  };

  /** What a key takes is seen to be in the hand: it hangs over where it lay. */
  const lift = (item: string): void => {
    const hose = hoseOfCoupler(item);
    const lay = sceneNow().gear.find(({ id }) => id === item)?.at;
    if (!lay) return;
    const at: PointMm = [lay[0], lay[1] - LIFT_MM];
    if (hose) scene.hoses[hose].carry([at[0], at[1] + MOUTH_MM]);
    if (item === CAN) scene.can.carry(at);
    carryEnd(item, at);
  };

  const carryEnd = (item: string, at: PointMm | null): void => {
    const inlet = inletOfEnd(item);
    if (inlet === null) return;
    if (inlet === leadingEnd(host.frame())) scene.can.carryEnd(at);
    else scene.spareEnd.carry(at);
  };

  /** Near a fitting where it fits the coupler stands just over it. */
  const heldOver = (carried: Carrying, over: string | null): PointMm | null => {
    const port = layout.ports.find(({ id }) => id === over && carried.valid.includes(id));
    return port ? [port.at[0], port.at[1] - OVER_MM] : null;
  };

  const showTug = (before: Hand): void => {
    const tugged = hand.doing === 'pressing' && hand.tugged ? hand : null;
    const item =
      tugged?.under?.id ?? (before.doing === 'pressing' && before.tugged ? before.under?.id : null);
    const hose = item ? hoseOfCoupler(item) : null;
    if (hose) scene.hoses[hose].strain(tugged?.tugged ?? null);
    if (item && inletOfEnd(item)) scene.can.strain(tugged?.tugged ?? null);
  };

  /** Whatever left the hand lies where the frame says, unless an intent puts it elsewhere. */
  const settle = (item: string): void => {
    scene.rings.lead([0, 0], null);
    if (item === CAN) scene.can.carry(null);
    carryEnd(item, null);
  };

  const act = (intent: Intent, all: readonly Intent[], led: readonly string[] | null | undefined): void => {
    const onto = all.find((one) => one.kind === 'drop')?.target ?? null;
    if (intent.kind === 'pick') callbacks.onPick(intent.id);
    else if (intent.kind === 'fall') {
      if (onto === null || (onto !== MAT && !refuse(intent.item, onto))) fall(intent.item);
    } else
      drop(
        intent.item,
        intent.target,
        all.some((other) => other.kind === 'fall'),
        led,
      );
  };

  const fall = (item: string): void => {
    const hose = hoseOfCoupler(item);
    if (hose) scene.hoses[hose].fall();
    // A can that was taken up to be shaken goes back to where it stood.
    if (item === CAN && wasShaken) callbacks.onDrop(CAN, host.frame().can?.onScale ? SCALE : MAT, []);
    wasShaken = false;
  };

  /** A fitting of another width: the coupler is seen not to go on. False where something else is in the way. */
  const refuse = (item: string, target: string): boolean => {
    const hose = hoseOfCoupler(item);
    const port = layout.ports.find((p) => p.id === target);
    if (!port || !hose) return false;
    const frame = host.frame();
    const { bore: fitting = port.boreMm, covered = false } = frame.ports[target] ?? {};
    const bore = frame.hoses.find(({ id }) => id === hose)?.bore;
    if (bore === undefined || bore === fitting || covered) return false;
    scene.hoses[hose].refuse(port.at);
    host.note(port.at, word('bay.refused', { coupler: String(bore), fitting: String(fitting) }));
    return true;
  };

  const drop = (
    item: string,
    target: string,
    falls: boolean,
    led: readonly string[] | null | undefined,
  ): void => {
    const hose = hoseOfCoupler(item);
    const port = layout.ports.find((p) => p.id === target);
    if (!port || !hose) {
      callbacks.onDrop(item, target, []);
      wasShaken = false;
      if (target === MAT) layDown(item);
      return;
    }
    if (falls) {
      callbacks.onDrop(item, target, []);
      return;
    }
    const node = scene.hoses[hose];
    const lies = node.putOn(port.id, port.at);
    const route = led === null ? zonesAlong(layout, lies) : (led ?? defaultRoute(layout, port.id));
    if (led === null) node.reported(route);
    if (!callbacks.onDrop(item, target, route)) node.fall();
  };

  /** A coupler put on the mat is off its port, whatever the last frame says. */
  const layDown = (item: string): void => {
    const hose = hoseOfCoupler(item);
    if (hose) scene.hoses[hose].layDown();
  };

  /** The can in the hand moved to and fro often enough. */
  const watchShaking = (at: PointMm, seconds: number): void => {
    if (hand.doing !== 'carrying' || hand.item !== CAN) {
      shaking = null;
      return;
    }
    shaking = shaking ? shakeOn(shaking, at, seconds) : startShaking(at, seconds);
    if (!isShaken(shaking)) return;
    shaking = null;
    wasShaken = true;
    scene.can.shake();
    callbacks.onShake();
  };

  const take = (itemId: string): void => {
    const gear = sceneNow().gear.find((thing) => thing.id === itemId);
    step({ kind: 'take', under: { id: itemId, takeable: true, from: gear?.from ?? null }, valid });
  };

  const putReady = (targetId: string, route?: readonly string[]): void => {
    if (hostHeld === null) return;
    take(hostHeld);
    step({ kind: 'put', target: targetId }, route);
  };

  /** The place that was pressed and let go of, where what the page holds may go. */
  const pressedPlace = (at: PointMm): string | null => {
    const ready = readyNow();
    if (!ready || hand.doing !== 'pressing') return null;
    if (hand.under?.takeable && !ready.valid.includes(hand.under.id)) return null;
    const place = dropTarget(sceneNow(), at, ready.valid);
    return place !== null && ready.valid.includes(place) ? place : null;
  };

  return {
    hand: () => hand,
    under: (at) => underPointer(sceneNow(), at),
    down: (at) => step({ kind: 'down', under: underPointer(sceneNow(), at), at }),
    move(at, seconds, finger) {
      step({ kind: 'move', at, valid });
      watchShaking(at, seconds);
      if (hand.doing === 'carrying') scene.rings.lead(at, finger);
    },
    up(at) {
      const place = pressedPlace(at);
      if (place !== null) putReady(place);
      else step({ kind: 'up', at, over: overFor(hand, sceneNow(), at), valid });
    },
    take,
    put(targetId, route) {
      if (hand.doing === 'carrying') step({ kind: 'put', target: targetId }, route);
      else putReady(targetId, route);
    },
    ready: readyNow,
    cancel() {
      const item = hand.doing === 'carrying' ? hand.item : null;
      step({ kind: 'cancel' });
      if (item === null) return;
      fall(item);
      host.changed();
    },
    follow(frame) {
      if (frame.held === hostHeld) return;
      hostHeld = frame.held;
      if (hand.doing !== 'carrying') scene.rings.set(ringsOf(sceneNow(), readyNow(), null));
    },
  };
}

/** Where something in the hand would land: a fitting, other gear or the mat; for a probe any valid thing. */
function overFor(hand: Hand, scene: Scene, at: PointMm): string | null {
  if (hand.doing !== 'carrying') return null;
  const under = underPointer({ ...scene, gear: [] }, at);
  if (under && hand.valid.includes(under.id)) return under.id;
  return dropTarget(scene, at, hand.valid);
}
