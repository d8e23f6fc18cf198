/**
 * One of the trainee's hoses: the chain that lies in the bay, beads with its letter, and its coupler: on a port from
 * above, loose on the mat in side view, or in the hand.
 *
 * A coupler that was just put on a port is shown there at once; where the next frames do not confirm it, it falls.
 */
import { Container, Sprite } from 'pixi.js';
import type { CoupledHose, PointMm } from '../../layout/layout';
import type { HoseFrame } from '../bayFrame';
import { badge, HOSE_INK } from '../drawing/badge';
import { BARB_MM, barbTip, couplerForm, couplerSide, couplerTop, MOUTH_MM } from '../drawing/gear/coupler';
import { warningSign } from '../drawing/gear/keepClear';
import { createChain, type HoseChain, LED_STEPS } from '../hose/chain';
import { ledWay, REST_TURN_DEG, restWay } from '../hose/hoseWays';
import { showStamp } from '../stamps';
import { createHosePaint, toLeftEdge } from './hosePaint';
import type { SceneContext, SceneNode } from './sceneNode';

export interface HoseNode extends SceneNode {
  /** Coupler in the hand, its mouth at the point. */
  carry(mouth: PointMm): void;
  /** Coupler put on a port; returns how the hose then lies, from the port to the gauge edge. */
  putOn(portId: string, at: PointMm): PointMm[];
  /** The zones just reported for this hose, so that the same route coming back does not lay it anew. */
  reported(route: readonly string[]): void;
  /** Lets the coupler fall back to the mat. */
  fall(): void;
  /** Middle of the coupler as it is drawn, and whether it is there at all. */
  couplerAt(): PointMm | null;
}

type Place =
  | { readonly kind: 'absent' }
  | { readonly kind: 'resting' }
  | { readonly kind: 'port'; readonly port: string; readonly at: PointMm; readonly awaited: number }
  | { readonly kind: 'carried'; readonly mouth: PointMm }
  | { readonly kind: 'falling'; readonly from: PointMm; readonly share: number };

const WIDTH_MM = 19;
const BEAD_SHARES = [0.3, 0.72] as const;
const BEAD_R = 15.5;
const EDGE_BEAD_R = 22;
/** How long an unconfirmed coupler stands on a port before it falls, s. */
const PATIENCE_S = 0.8;
const FALL_S = 0.35;
/** Steps a chain is given to come to rest when it is laid without being watched. */
const SETTLE_STEPS = 40;
/** A direction is drawn in steps of this many degrees, so that couplers share pictures. */
const TURN_STEP_DEG = 10;

export function hoseNode(context: SceneContext, hose: CoupledHose): HoseNode {
  const form = couplerForm(hose);
  const view = new Container();
  const strokes = createHosePaint(context);
  const beads = [...BEAD_SHARES, 1].map(() => new Sprite());
  const coupler = new Sprite();
  const warning = new Sprite();
  view.addChild(strokes.view, ...beads, coupler, warning);
  view.visible = false;
  let place: Place = { kind: 'absent' };
  let chain: HoseChain | null = null;
  let route = '';
  let open = false;
  let caught = false;
  let moving = false;

  const lay = (way: readonly PointMm[], steps: number): void => {
    chain?.dispose();
    chain = createChain(way);
    chain.step(steps);
  };
  const toRest = (): void => {
    place = { kind: 'resting' };
    route = '';
    lay(restWay(context.layout, hose), 2);
  };
  const draw = (): void => {
    view.visible = place.kind !== 'absent' && chain !== null;
    if (!view.visible || !chain) return;
    const points = toLeftEdge(chain.points(), context.leftMm());
    const lifted = place.kind === 'carried';
    const look = { ink: HOSE_INK[hose], widthMm: WIDTH_MM, liftMm: lifted ? 60 : 34 };
    strokes.paint(points, look, moving || lifted);
    placeBeads(points);
    placeCoupler(points);
    warning.visible = caught;
    const torn = points[2];
    if (caught)
      showStamp(
        warning,
        context.stamps.get('torn', () => warningSign(0, 0, 26)),
        torn[0],
        torn[1],
      );
  };
  const placeBeads = (points: readonly PointMm[]): void => {
    const bead = context.stamps.get(`bead:${hose}`, () => badge(hose, 0, 0, BEAD_R));
    const leftMost = context.leftMm() + EDGE_BEAD_R + 8;
    BEAD_SHARES.forEach((share, i) => {
      const [x, y] = points[Math.round(share * (points.length - 1))];
      beads[i].visible = x > leftMost + 3.4 * EDGE_BEAD_R;
      showStamp(beads[i], bead, x, y);
    });
    const at = points.find(([x]) => x < leftMost) ?? points[points.length - 1];
    showStamp(
      beads[2],
      context.stamps.get(`edge:${hose}`, () => badge(hose, 0, 0, EDGE_BEAD_R)),
      Math.max(leftMost, at[0]),
      at[1],
    );
  };
  const placeCoupler = (points: readonly PointMm[]): void => {
    if (place.kind === 'port') {
      const away = points[3];
      const degrees = (Math.atan2(away[1] - place.at[1], away[0] - place.at[0]) * 180) / Math.PI;
      const turn = Math.round(degrees / TURN_STEP_DEG) * TURN_STEP_DEG;
      const draw = () => couplerTop(form, (turn * Math.PI) / 180, open);
      showStamp(
        coupler,
        context.stamps.get(`coupler:${form}:${turn}:${open}`, draw),
        place.at[0],
        place.at[1],
      );
      return;
    }
    const lying = place.kind === 'resting';
    const [x, y] = middle();
    const draw = () => (lying ? couplerSide(form, REST_TURN_DEG) : couplerSide(form, 0, true));
    showStamp(coupler, context.stamps.get(`coupler:${form}:${lying ? 'lying' : 'held'}`, draw), x, y);
  };
  const middle = (): PointMm => {
    const rest = context.layout.mat.rest[hose];
    if (place.kind === 'port') return place.at;
    if (place.kind === 'carried') return [place.mouth[0], place.mouth[1] - MOUTH_MM];
    if (place.kind !== 'falling') return rest;
    const k = place.share * place.share;
    return [place.from[0] + (rest[0] - place.from[0]) * k, place.from[1] + (rest[1] - place.from[1]) * k];
  };
  const pullHeld = (): void => {
    const [x, y] = middle();
    const [dx, dy] = barbTip(form, 0, true);
    chain?.pull([x + dx, y + dy]);
    moving = true;
  };

  const fall = (): void => {
    if (place.kind === 'absent') return;
    if (context.still) toRest();
    else place = { kind: 'falling', from: middle(), share: 0 };
    draw();
  };

  return {
    view,
    show(frame, fresh) {
      const mine = frame.hoses.find((h) => h.id === hose);
      const before = [place, open, chain, caught] as const;
      caught = mine?.caught ?? false;
      if (!mine) place = place.kind === 'absent' ? place : { kind: 'absent' };
      else if (place.kind !== 'carried' && place.kind !== 'falling') follow(mine);
      if (fresh || before[0] !== place || before[1] !== open || before[2] !== chain || before[3] !== caught)
        draw();
    },
    carry(mouth) {
      if (place.kind === 'absent') return;
      place = { kind: 'carried', mouth };
      pullHeld();
      draw();
    },
    putOn(portId, at) {
      const [x, y] = chain?.points()[4] ?? at;
      const far = Math.hypot(x - at[0], y - at[1]) || 1;
      place = { kind: 'port', port: portId, at, awaited: PATIENCE_S };
      open = false;
      chain?.pull([at[0] + ((x - at[0]) / far) * BARB_MM * 0.8, at[1] + ((y - at[1]) / far) * BARB_MM * 0.8]);
      chain?.step(SETTLE_STEPS);
      moving = false;
      draw();
      return [at, ...(chain?.points() ?? [])];
    },
    reported(zones) {
      route = zones.join(',');
    },
    fall,
    couplerAt: () => (place.kind === 'absent' ? null : middle()),
    tick(seconds) {
      if (place.kind === 'port' && place.awaited > 0) {
        const awaited = place.awaited - seconds;
        place = { ...place, awaited };
        if (awaited <= 0) fall();
        return true;
      }
      if (place.kind === 'falling') {
        place = { ...place, share: Math.min(1, place.share + seconds / FALL_S) };
        if (place.share >= 1) {
          toRest();
          draw();
          context.rested();
          return true;
        }
        pullHeld();
      }
      if (!moving || !chain) return false;
      moving = chain.step(Math.min(4, Math.max(1, Math.round(seconds * 60))));
      draw();
      return true;
    },
  };

  function follow(mine: HoseFrame): void {
    open = mine.open;
    if (mine.port === null) {
      if (place.kind === 'port' && place.awaited > 0) return;
      if (place.kind !== 'resting' || !chain) toRest();
      return;
    }
    const port = context.layout.ports.find((p) => p.id === mine.port);
    if (!port) return;
    const same = place.kind === 'port' && place.port === mine.port && route === mine.route.join(',') && chain;
    if (same && place.kind === 'port' && place.awaited === 0) return;
    place = { kind: 'port', port: mine.port, at: port.at, awaited: 0 };
    if (same) return;
    route = mine.route.join(',');
    lay(ledWay(context.layout, hose, mine.port, mine.route), LED_STEPS);
  }
}
