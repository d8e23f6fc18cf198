/**
 * The coupler of a hose: on a port from above, its knob going in and out; loose or in the hand in side view, turned as it
 * falls; the ring of a click round it. It is told where it is and draws that, nothing more.
 */
import { Container, Graphics, Sprite } from 'pixi.js';
import type { PointMm } from '../../layout/layout';
import { type CouplerForm, couplerSide, couplerTop } from '../drawing/gear/coupler';
import { REST_TURN_DEG } from '../hose/hoseWays';
import { showStamp } from '../stamps';
import { type CouplerPose, TURN_S, TURN_STEPS } from './couplerMotion';
import type { SceneContext } from './sceneNode';

export interface CouplerNode {
  readonly view: Container;
  /** On a port: the hose leaves at `angle` (radians). */
  onPort(at: PointMm, angle: number, pose: CouplerPose): void;
  /** Loose: upright at 0 degrees with its mouth down, lying at -90. */
  loose(at: PointMm, turnDeg: number): void;
  /** Its knob is to stand in or out; it turns there, or stands so at once. */
  turn(open: boolean, atOnce: boolean): void;
  /** True while its knob turns. */
  tick(seconds: number): boolean;
}

/** A direction is drawn in steps of this many degrees, so that couplers share pictures. */
const ANGLE_STEP_DEG = 10;
const CLICK_FROM_MM = 34;
const CLICK_TO_MM = 62;

export function couplerNode(context: SceneContext, form: CouplerForm): CouplerNode {
  const view = new Container();
  const body = new Sprite();
  const turned = new Container();
  const click = new Graphics();
  let turnedIn = 0;
  let turnsTo = 0;
  turned.addChild(body);
  view.addChild(click, turned);
  return {
    view,
    onPort(at, angle, pose) {
      const degrees = Math.round((angle * 180) / Math.PI / ANGLE_STEP_DEG) * ANGLE_STEP_DEG;
      const step = Math.round(turnedIn * TURN_STEPS);
      const draw = () => couplerTop(form, (degrees * Math.PI) / 180, step / TURN_STEPS);
      showStamp(body, context.stamps.get(`coupler:${form}:${degrees}:${step}`, draw));
      turned.rotation = 0;
      turned.position.set(
        at[0] + Math.cos(angle) * pose.tugMm,
        at[1] + Math.sin(angle) * pose.tugMm - pose.liftMm,
      );
      ring(at, pose.click);
    },
    loose(at, turnDeg) {
      const drawn = turnDeg === REST_TURN_DEG ? turnDeg : 0;
      showStamp(
        body,
        context.stamps.get(`coupler:${form}:side:${drawn}`, () => couplerSide(form, drawn, true)),
      );
      turned.rotation = ((turnDeg - drawn) * Math.PI) / 180;
      turned.position.set(at[0], at[1]);
      ring(at, null);
    },
    turn(open, atOnce) {
      turnsTo = open ? 1 : 0;
      if (atOnce || context.still) turnedIn = turnsTo;
    },
    tick(seconds) {
      if (turnedIn === turnsTo) return false;
      const by = seconds / TURN_S;
      turnedIn = turnsTo > turnedIn ? Math.min(turnsTo, turnedIn + by) : Math.max(turnsTo, turnedIn - by);
      return true;
    },
  };

  function ring([x, y]: PointMm, share: number | null): void {
    click.clear();
    if (share === null) return;
    const alpha = 1 - share;
    const r = CLICK_FROM_MM + (CLICK_TO_MM - CLICK_FROM_MM) * share;
    click.circle(x, y, r).stroke({ color: context.palette().ink, width: 9, alpha: alpha * 0.6 });
    click.circle(x, y, r).stroke({ color: context.palette().white, width: 5, alpha });
  }
}
