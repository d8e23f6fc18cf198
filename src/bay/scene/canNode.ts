/** The can on the mat or in the hand, its tilt dial, the scale under it, and the hose that leads from it to the gauges. */
import { Container, Sprite } from 'pixi.js';
import type { PointMm } from '../../layout/layout';
import type { CanFrame, CanInlet } from '../bayFrame';
import { badge } from '../drawing/badge';
import { CAN_SCALE, canDrawing, canOutlet, scalePlate, tiltDial } from '../drawing/gear/can';
import { chargingEnd } from '../drawing/gear/coupler';
import { createChain, type HoseChain, laidAlong } from '../hose/chain';
import { drape, IN_HAND_MM } from '../hose/drape';
import { freeEndAt } from '../hose/freeEndAt';
import { canWay } from '../hose/hoseWays';
import { leadingEnd } from '../hose/leadingEnd';
import { stepsIn } from '../hose/stepsIn';
import { showStamp } from '../stamps';
import { CAN_HOSE_MM, END_MM, LAID_STEPS } from './canHose';
import { createHosePaint, type HangingPoint, toLeftEdge } from './hosePaint';
import type { SceneContext, SceneNode } from './sceneNode';

export interface CanNode extends SceneNode {
  /** The can in the hand at a point; null puts it back on the mat. */
  carry(at: PointMm | null): void;
  /** The free end of the hose that leads to it, in the hand at a point; null lets it fall back. */
  carryEnd(at: PointMm | null): void;
  /** Where the joint with its hose is pulled to while it holds; null when nobody pulls. */
  strain(toward: PointMm | null): void;
  canAt(): PointMm | null;
  /** The nut that joins it to its hose; null while it is on none. */
  jointAt(): PointMm | null;
  /** Middle of its tap's handle. */
  valveAt(): PointMm | null;
  dialAt(): PointMm | null;
  scaleAt(): PointMm | null;
  /** The can in the hand was shaken: it trembles and comes to rest. */
  shake(): void;
}

const FROST_STEPS = 20;
/** From the can's middle to the handle of its tap, upright. */
const HANDLE_MM = 118 * CAN_SCALE;
/** A can that is not on the scale is held beside it. */
const OFF_SCALE: PointMm = [-18, -34];
const SCALE_FROM_CAN: PointMm = [0, 66];
const DIAL_FROM_PLACE: PointMm = [-112, -56];
/** The end of its hose over the mat, as the tap stands. */
const TAP_MM = 120;
/** How a shaken can trembles: how far, how fast, how long. */
const SHAKE_MM = 7;
const SHAKES_PER_S = 7;
const SHAKE_S = 0.7;
/** How far it gives when its hose is pulled at. */
const GIVE_MM = 7;
/** How long a can has stood still before its hose is laid anew. */
const LAID_AFTER_S = 0.15;
/** An inverted can is held this much higher, so that its tap is clear of the scale. */
const INVERTED_LIFT_MM = 58;

export function canNode(context: SceneContext): CanNode {
  const view = new Container();
  const hose = createHosePaint(context);
  const [bead, plate, can, dial, end] = [
    new Sprite(),
    new Sprite(),
    new Sprite(),
    new Sprite(),
    new Sprite(),
  ];
  view.addChild(hose.view, plate, bead, end, can, dial);
  let frame: CanFrame | null = null;
  /** The hose that leads to it, and where its end lies while it is free. */
  let leads: CanInlet | null = null;
  let endRest: PointMm = context.layout.mat.rest.utility;
  let endHeld = false;
  let pulled: PointMm | null = null;
  let held: PointMm | null = null;
  let chain: HoseChain | null = null;
  let moving = false;
  let laidFor = '';
  let seatedFor = '';
  /** The state that was shown last. */
  let shown = '';
  /** Until the hose of a can that is being turned is laid anew, s. */
  let layIn = 0;
  /** Left of the shaking, s. */
  let trembling = 0;
  view.visible = false;

  const place = (): PointMm => {
    const [x, y] = context.layout.mat.canAt;
    return held ?? (frame?.onScale ? [x, y] : [x + OFF_SCALE[0], y + OFF_SCALE[1]]);
  };
  /** Off its place by what a pull at its hose gives. */
  const given = (): PointMm => {
    const [x, y] = place();
    if (!pulled) return [x, y];
    const [dx, dy] = [pulled[0] - x, pulled[1] - y];
    const far = Math.max(GIVE_MM, Math.sqrt(dx * dx + dy * dy));
    return [x + (dx / far) * GIVE_MM, y + (dy / far) * GIVE_MM];
  };
  const at = (): PointMm => {
    const [left, y] = given();
    const x = left + SHAKE_MM * (trembling / SHAKE_S) * Math.sin(2 * Math.PI * SHAKES_PER_S * trembling);
    const share = (1 - Math.cos(((frame?.tiltDeg ?? 0) * Math.PI) / 180)) / 2;
    return [x, y - INVERTED_LIFT_MM * share];
  };
  const dialPlace = (): PointMm => {
    const [x, y] = held ?? context.layout.mat.canAt;
    return [x + DIAL_FROM_PLACE[0], y + DIAL_FROM_PLACE[1]];
  };
  const draw = (): void => {
    view.visible = frame !== null || leads !== null;
    can.visible = frame !== null;
    dial.visible = frame !== null;
    plate.visible = frame !== null;
    if (frame) drawCan(frame);
    drawHose();
  };
  const drawCan = (now: CanFrame): void => {
    const [x, y] = at();
    const frost = now.frostLevel === null ? null : Math.round(now.frostLevel * FROST_STEPS) / FROST_STEPS;
    const state = `${now.print}:${now.tiltDeg}:${now.valveSixteenths}:${frost}`;
    showStamp(
      can,
      context.stamps.slot('can', state, () => canDrawing(now.print, now.tiltDeg, now.valveSixteenths, frost)),
      x,
      y,
    );
    showStamp(
      dial,
      context.stamps.get(`dial:${now.tiltDeg}`, () => tiltDial(now.tiltDeg)),
      ...dialPlace(),
    );
    if (plate.visible)
      showStamp(
        plate,
        context.stamps.slot('scale', String(now.readout), () => scalePlate(now.readout)),
        ...context.layout.mat.canAt,
      );
  };
  const seatKey = (): string => `${leads}:${endRest}:${frame?.mounted}:${frame?.onScale}:${frame?.onto}`;
  const hoseKey = (): string => `${seatKey()}:${frame?.tiltDeg}`;
  const dropChain = (): void => {
    chain?.dispose();
    chain = null;
    moving = false;
  };
  /** The hose slides to where the can has gone; while the can is carried its end goes along. */
  const layHose = (): void => {
    [seatedFor, laidFor] = [seatKey(), hoseKey()];
    layIn = 0;
    if (!leads) {
      dropChain();
      return;
    }
    const outlet = frame?.mounted ? outletAt(frame) : null;
    const way = laidAlong(canWay(context.layout, outlet, frame?.tiltDeg ?? 0, endRest), LAID_STEPS);
    if (!chain || context.still) {
      chain?.dispose();
      chain = createChain(way);
      moving = false;
      return;
    }
    if (outlet) chain.pull(outlet);
    chain.sendHome(way);
    moving = true;
  };
  /** The end of its hose goes along with a can that turns; all of the hose is laid once that has come to rest. */
  const follow = (): void => {
    if (!chain || !frame?.mounted || context.still || seatKey() !== seatedFor) {
      layHose();
      return;
    }
    laidFor = hoseKey();
    chain.pull(outletAt(frame));
    moving = true;
    layIn = LAID_AFTER_S;
  };
  const drawHose = (): void => {
    bead.visible = leads !== null;
    end.visible = leads !== null && (endHeld || !frame?.mounted);
    hose.view.visible = chain !== null;
    if (!chain) return;
    const points = toLeftEdge(chain.points(), context.leftMm());
    const headMm = held !== null || endHeld ? IN_HAND_MM : frame?.mounted ? TAP_MM : 0;
    const heights = drape(context.layout, points, headMm);
    const hanging = points.map(([x, y], i): HangingPoint => [x, y, heights[i]]);
    hose.paint(hanging, { ink: 'chg', widthMm: CAN_HOSE_MM }, moving || held !== null || endHeld);
    const [bx, by] = points[Math.round(points.length * 0.62)];
    showStamp(
      bead,
      context.stamps.get(`bead:${leads}`, () => badge(leads ?? 'utility', 0, 0, 17)),
      bx,
      by,
    );
    const [x, y] = points[0];
    if (end.visible) showStamp(end, context.stamps.get('charging-end', chargingEnd), x + END_MM, y);
  };
  const outletAt = (now: CanFrame): PointMm => {
    const [dx, dy] = canOutlet(now.tiltDeg);
    return [at()[0] + dx, at()[1] + dy];
  };

  return {
    view,
    show(next, fresh) {
      const led = leads;
      frame = next.can;
      leads = leadingEnd(next);
      if (leads) endRest = freeEndAt(context.layout, next, leads);
      if (leads !== led) dropChain();
      const now = `${hoseKey()}${JSON.stringify(frame)}`;
      if (!fresh && now === shown) return;
      shown = now;
      if (fresh || hoseKey() !== laidFor) follow();
      draw();
    },
    carry(point) {
      held = point;
      if (held && frame?.mounted) {
        chain?.pull(outletAt(frame));
        moving = chain !== null;
      } else if (!held) layHose();
      draw();
    },
    carryEnd(point) {
      if (!chain || (point === null && !endHeld)) return;
      endHeld = point !== null;
      if (point) {
        chain.pull([point[0] - END_MM, point[1]]);
        moving = true;
      } else layHose();
      draw();
    },
    strain(toward) {
      if (pulled === toward) return;
      pulled = toward;
      if (frame?.mounted) chain?.pull(outletAt(frame));
      draw();
    },
    shake() {
      trembling = context.still ? 0 : SHAKE_S;
    },
    tick(seconds) {
      if (!moving && trembling <= 0 && layIn <= 0) return false;
      trembling = Math.max(0, trembling - seconds);
      if (layIn > 0) {
        layIn -= seconds;
        if (layIn <= 0) layHose();
      }
      if (moving) moving = (chain?.step(stepsIn(seconds)) ?? false) || layIn > 0;
      draw();
      return true;
    },
    canAt: () => (frame ? at() : null),
    jointAt: () => (frame?.onto ? outletAt(frame) : null),
    valveAt() {
      if (!frame) return null;
      const angle = (frame.tiltDeg * Math.PI) / 180;
      return [at()[0] + Math.sin(angle) * HANDLE_MM, at()[1] - Math.cos(angle) * HANDLE_MM];
    },
    scaleAt() {
      const [x, y] = context.layout.mat.canAt;
      return frame ? [x + SCALE_FROM_CAN[0], y + SCALE_FROM_CAN[1]] : null;
    },
    dialAt: () => (frame ? dialPlace() : null),
  };
}
