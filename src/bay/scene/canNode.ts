/** The can on the mat or in the hand, its tilt dial, the scale under it, and the hose that leads from it to the gauges. */
import { Container, Sprite } from 'pixi.js';
import type { HoseId, PointMm } from '../../layout/layout';
import type { BayFrame, CanFrame } from '../bayFrame';
import { badge } from '../drawing/badge';
import { CAN_SCALE, canDrawing, canOutlet, scalePlate, tiltDial } from '../drawing/gear/can';
import { chargingEnd } from '../drawing/gear/coupler';
import { createChain } from '../hose/chain';
import { canWay } from '../hose/hoseWays';
import { showStamp } from '../stamps';
import { createHosePaint, toLeftEdge } from './hosePaint';
import type { SceneContext, SceneNode } from './sceneNode';

export interface CanNode extends SceneNode {
  /** The can in the hand at a point; null puts it back on the mat. */
  carry(at: PointMm | null): void;
  canAt(): PointMm | null;
  /** Middle of its tap's handle. */
  valveAt(): PointMm | null;
  dialAt(): PointMm | null;
  scaleAt(): PointMm | null;
}

const HOSE_WIDTH_MM = 16;
const FROST_STEPS = 20;
/** From the can's middle to the handle of its tap, upright. */
const HANDLE_MM = 118 * CAN_SCALE;
/** A can that is not on the scale is held beside it. */
const OFF_SCALE: PointMm = [-18, -34];
const SCALE_FROM_CAN: PointMm = [0, 66];
const DIAL_FROM_PLACE: PointMm = [-112, -56];
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
  let hosed = false;
  let leads: HoseId = 'utility';
  let held: PointMm | null = null;
  view.visible = false;

  const place = (): PointMm => {
    const [x, y] = context.layout.mat.canAt;
    return held ?? (frame?.onScale ? [x, y] : [x + OFF_SCALE[0], y + OFF_SCALE[1]]);
  };
  const at = (): PointMm => {
    const [x, y] = place();
    const share = (1 - Math.cos(((frame?.tiltDeg ?? 0) * Math.PI) / 180)) / 2;
    return [x, y - INVERTED_LIFT_MM * share];
  };
  const dialPlace = (): PointMm => {
    const [x, y] = held ?? context.layout.mat.canAt;
    return [x + DIAL_FROM_PLACE[0], y + DIAL_FROM_PLACE[1]];
  };
  const draw = (): void => {
    view.visible = frame !== null || hosed;
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
  const drawHose = (): void => {
    hose.clear();
    bead.visible = hosed;
    end.visible = hosed && !frame?.mounted;
    if (!hosed) return;
    const outlet = frame?.mounted ? outletAt(frame) : null;
    const chain = createChain(canWay(context.layout, outlet, frame?.tiltDeg ?? 0));
    chain.step(6);
    const points = toLeftEdge(chain.points(), context.leftMm());
    chain.dispose();
    hose.paint(points, { ink: 'chg', widthMm: HOSE_WIDTH_MM, liftMm: 30 }, held !== null);
    const [bx, by] = points[Math.round(points.length * 0.62)];
    showStamp(
      bead,
      context.stamps.get(`bead:${leads}`, () => badge(leads, 0, 0, 17)),
      bx,
      by,
    );
    const rest = context.layout.mat.rest.utility;
    if (end.visible) showStamp(end, context.stamps.get('charging-end', chargingEnd), rest[0], rest[1]);
  };
  const outletAt = (now: CanFrame): PointMm => {
    const [dx, dy] = canOutlet(now.tiltDeg);
    return [at()[0] + dx, at()[1] + dy];
  };

  return {
    view,
    show(now, fresh) {
      const before = key(frame, hosed);
      frame = now.can;
      hosed = now.can?.mounted === true || now.hoses.some((h) => h.id === 'utility');
      leads = leadOf(now);
      if (fresh || key(frame, hosed) !== before) draw();
    },
    carry(point) {
      held = point;
      draw();
    },
    canAt: () => (frame ? at() : null),
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

/** Which hose leads from the can: the one said, else the only one that can. */
function leadOf({ can, hoses }: BayFrame): HoseId {
  if (can?.onto) return can.onto;
  return hoses.some((h) => h.id === 'utility') ? 'utility' : 'charging';
}

const key = (frame: CanFrame | null, hosed: boolean): string => `${hosed}${JSON.stringify(frame)}`;
