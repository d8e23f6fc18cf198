/**
 * One of the trainee's hoses: the chain that lies in the bay, beads with its letter, and its coupler on a port, on the
 * mat, in the hand or on its way home. Where it lies in danger it is barred.
 *
 * A coupler that was just put on a port is shown there at once, pushed, and tugged; where the next frames do not confirm
 * it, it comes off and falls.
 */
import { Container, Sprite } from 'pixi.js';
import { distance } from '../../layout/course';
import type { CoupledHose, PointMm } from '../../layout/layout';
import type { HoseFrame } from '../bayFrame';
import { HOSE_INK } from '../drawing/badge';
import { BARB_MM, barbTip, couplerForm, MOUTH_MM } from '../drawing/gear/coupler';
import { warningSign } from '../drawing/gear/keepClear';
import { dangersOf, type HoseDanger } from '../gesture/hoseDanger';
import { createChain, type HoseChain, LED_STEPS, laidAlong } from '../hose/chain';
import { drape, IN_HAND_MM, ON_PORT_MM } from '../hose/drape';
import { ledWay, REST_TURN_DEG, restWay } from '../hose/hoseWays';
import { stepsIn } from '../hose/stepsIn';
import { showStamp } from '../stamps';
import { beadNode } from './beadNode';
import { AT_REST, pushedOn, refused } from './couplerMotion';
import { couplerNode } from './couplerNode';
import { dangerPaint } from './dangerPaint';
import { createHosePaint, type HangingPoint, toLeftEdge } from './hosePaint';
import type { SceneContext, SceneNode } from './sceneNode';

export interface HoseNode extends SceneNode {
  /** Coupler in the hand, its mouth at the point. */
  carry(mouth: PointMm): void;
  /** Coupler put on a port; returns how the hose then lies, from the port to the gauge edge. */
  putOn(portId: string, at: PointMm): PointMm[];
  /** The zones just reported for this hose, so that the same route coming back does not lay it anew. */
  reported(route: readonly string[]): void;
  /** The coupler does not go on what is here: it stands off, is nudged, and falls. */
  refuse(at: PointMm): void;
  /** A coupler that stands on its port is pulled at and holds; null lets go. */
  strain(toward: PointMm | null): void;
  /** Lets the coupler fall back to where it belongs: its port where it stands on one, else the mat. */
  fall(): void;
  /** Lays the coupler on the mat, from wherever it was. */
  layDown(): void;
  /** Middle of the coupler, or where it is falling to; null where there is none. */
  couplerAt(): PointMm | null;
  /** What the hose lies in now that would catch or burn it. */
  dangers(): readonly HoseDanger[];
}

type Place =
  | { readonly kind: 'absent' | 'resting' }
  | { readonly kind: 'port'; readonly port: string; readonly at: PointMm }
  | { readonly kind: 'carried'; readonly mouth: PointMm }
  | { readonly kind: 'refused'; readonly at: PointMm }
  | { readonly kind: 'falling'; readonly fromMm: number };

const WIDTH_MM = 19;
/** How long an unconfirmed coupler stands on a port before it falls, s. */
const PATIENCE_S = 0.8;
/** Steps a chain is given to come to rest before its route is read. */
const SETTLE_STEPS = 40;
/** A pull that holds moves the coupler no farther than this. */
const STRAIN_MM = 9;

export function hoseNode(context: SceneContext, hose: CoupledHose): HoseNode {
  const { layout, still } = context;
  const form = couplerForm(hose);
  const view = new Container();
  const strokes = createHosePaint(context);
  const danger = dangerPaint(context);
  const beads = beadNode(context, hose);
  const coupler = couplerNode(context, form);
  const warning = new Sprite();
  view.addChild(strokes.view, danger.view, beads.view, coupler.view, warning);
  view.visible = false;
  const rest = layout.mat.rest[hose];
  let place: Place = { kind: 'absent' };
  let chain: HoseChain | null = null;
  let mine: HoseFrame | null = null;
  let route = '';
  let caught = false;
  let moving = false;
  let awaited = 0;
  /** Since it was put where it is, s. */
  let since = Number.POSITIVE_INFINITY;
  let pulled: PointMm | null = null;
  let inDanger: readonly HoseDanger[] = [];

  /** Lays the hose along a way: it slides there from where it lies, or lies there at once. */
  const lay = (way: readonly PointMm[]): void => {
    moving = chain !== null && !still;
    if (chain && !still) chain.sendHome(way);
    else {
      chain?.dispose();
      chain = createChain(way);
    }
  };
  const [restX, restY] = barbTip(form, REST_TURN_DEG, true);
  const home: PointMm = [rest[0] + restX, rest[1] + restY];
  const headAwayMm = (): number => distance(chain?.points()[0] ?? home, home);
  const goToMat = (): void => {
    place = still || !chain ? { kind: 'resting' } : { kind: 'falling', fromMm: Math.max(1, headAwayMm()) };
    route = '';
    inDanger = [];
    lay(laidAlong(restWay(layout, hose), 2));
  };
  const goToPort = (port: string, at: PointMm, through: readonly string[]): void => {
    if (place.kind !== 'absent' && (place.kind !== 'port' || place.port !== port)) since = 0;
    place = { kind: 'port', port, at };
    route = through.join(',');
    awaited = 0;
    const way = laidAlong(ledWay(layout, hose, port, through), LED_STEPS);
    chain?.pull(way[0]);
    lay(way);
  };
  const fall = (): void => {
    const at = mine?.port && layout.ports.find((p) => p.id === mine?.port)?.at;
    if (place.kind === 'absent') return;
    if (mine?.port && at) goToPort(mine.port, at, mine.route);
    else goToMat();
    draw();
  };

  /** Turned from upright in the hand to lying on the mat as it comes near. */
  const turnDeg = (): number => {
    if (place.kind === 'resting') return REST_TURN_DEG;
    if (place.kind !== 'falling') return 0;
    const gone = 1 - Math.min(1, headAwayMm() / place.fromMm);
    return REST_TURN_DEG * gone * gone;
  };
  const middle = (): PointMm => {
    if (place.kind === 'port') return place.at;
    if (place.kind === 'carried') return [place.mouth[0], place.mouth[1] - MOUTH_MM];
    if (place.kind === 'refused') return [place.at[0], place.at[1] - MOUTH_MM - refused(since, still).liftMm];
    if (place.kind === 'resting' || !chain) return rest;
    const [head] = chain.points();
    const [dx, dy] = barbTip(form, turnDeg(), true);
    return [head[0] - dx, head[1] - dy];
  };
  /** The end of the hose goes with the coupler in the hand. */
  const lead = (): void => {
    const [x, y] = middle();
    const [dx, dy] = barbTip(form, 0, true);
    chain?.pull([x + dx, y + dy]);
    moving = true;
  };

  /** Where the coupler's mouth is: it can be caught as well as its hose. */
  const tip = (): PointMm[] =>
    place.kind === 'port' ? [place.at] : place.kind === 'carried' ? [place.mouth] : [];
  const draw = (): void => {
    view.visible = place.kind !== 'absent' && chain !== null;
    if (!view.visible || !chain) return;
    const points = toLeftEdge(chain.points(), context.leftMm());
    const loose = place.kind === 'resting' || place.kind === 'falling';
    const lifted = place.kind === 'carried' || place.kind === 'refused';
    const heights = drape(layout, points, lifted ? IN_HAND_MM : loose ? 0 : ON_PORT_MM);
    const hanging = points.map(([x, y], i): HangingPoint => [x, y, heights[i]]);
    const skin = { frost: mine?.frost ?? 0, sweat: mine?.sweat ?? 0 };
    strokes.paint(hanging, { ink: HOSE_INK[hose], widthMm: WIDTH_MM, ...skin }, moving || lifted);
    inDanger = loose ? [] : dangersOf(layout, [...tip(), ...points]);
    danger.show(inDanger, WIDTH_MM);
    beads.place(points);
    placeCoupler(points);
    warning.visible = caught;
    if (caught)
      showStamp(
        warning,
        context.stamps.get('torn', () => warningSign(0, 0, 26)),
        points[2][0],
        points[2][1],
      );
  };
  const placeCoupler = (points: readonly PointMm[]): void => {
    if (place.kind !== 'port') {
      coupler.loose(middle(), turnDeg());
      return;
    }
    const { at } = place;
    const angle = Math.atan2(points[3][1] - at[1], points[3][0] - at[0]);
    const far = pulled ? Math.hypot(pulled[0] - at[0], pulled[1] - at[1]) || 1 : 1;
    const give = pulled ? STRAIN_MM * Math.min(1, far / 40) : 0;
    const stands: PointMm = pulled
      ? [at[0] + ((pulled[0] - at[0]) / far) * give, at[1] + ((pulled[1] - at[1]) / far) * give]
      : at;
    coupler.onPort(stands, angle, still ? AT_REST : pushedOn(since));
  };

  const follow = (now: HoseFrame): void => {
    if (place.kind === 'carried' || place.kind === 'refused') return;
    const port = now.port && layout.ports.find((p) => p.id === now.port);
    if (!port) {
      if (place.kind === 'port' && awaited > 0) return;
      if (place.kind === 'absent') {
        place = { kind: 'resting' };
        lay(laidAlong(restWay(layout, hose), 2));
        moving = false;
      } else if (place.kind === 'port') goToMat();
      return;
    }
    const led = now.route.join(',');
    if (place.kind === 'port' && place.port === port.id && route === led) awaited = 0;
    else goToPort(port.id, port.at, now.route);
  };
  const unfold = (seconds: number): boolean => {
    if (since === Number.POSITIVE_INFINITY) return false;
    since += seconds;
    if (place.kind === 'refused' && refused(since, still).done) {
      fall();
      context.rested();
    }
    if (place.kind === 'refused') {
      if (!still) lead();
      return true;
    }
    if (place.kind !== 'port' || pushedOn(since).done) since = Number.POSITIVE_INFINITY;
    return true;
  };
  const wait = (seconds: number): boolean => {
    if (place.kind !== 'port' || awaited <= 0) return false;
    awaited -= seconds;
    if (awaited > 0) return true;
    goToMat();
    context.rested();
    return true;
  };
  return {
    view,
    show(frame, fresh) {
      const before = [place, chain, caught, moving] as const;
      const wasOpen = mine?.open ?? false;
      const skin = skinOf(mine);
      mine = frame.hoses.find((h) => h.id === hose) ?? null;
      caught = mine?.caught ?? false;
      if (mine) follow(mine);
      else place = place.kind === 'absent' ? place : { kind: 'absent' };
      coupler.turn(mine?.open ?? false, before[0].kind === 'absent');
      const changed =
        before[0] !== place || before[1] !== chain || before[2] !== caught || before[3] !== moving;
      if (fresh || changed || wasOpen !== (mine?.open ?? false) || skin !== skinOf(mine)) draw();
    },
    carry(mouth) {
      if (place.kind === 'absent') return;
      place = { kind: 'carried', mouth };
      lead();
    },
    putOn(portId, at) {
      const [x, y] = chain?.points()[4] ?? at;
      const far = Math.hypot(x - at[0], y - at[1]) || 1;
      place = { kind: 'port', port: portId, at };
      awaited = PATIENCE_S;
      since = 0;
      chain?.pull([at[0] + ((x - at[0]) / far) * BARB_MM * 0.8, at[1] + ((y - at[1]) / far) * BARB_MM * 0.8]);
      chain?.step(SETTLE_STEPS);
      moving = false;
      draw();
      return [at, ...(chain?.points() ?? [])];
    },
    reported(zones) {
      route = zones.join(',');
    },
    refuse(at) {
      if (place.kind === 'absent') return;
      place = { kind: 'refused', at };
      since = 0;
      lead();
      draw();
    },
    strain(toward) {
      if (pulled === toward) return;
      pulled = toward;
      if (place.kind === 'port') draw();
    },
    fall,
    layDown() {
      if (place.kind === 'absent') return;
      goToMat();
      draw();
    },
    couplerAt: () => (place.kind === 'absent' ? null : place.kind === 'falling' ? rest : middle()),
    dangers: () => inDanger,
    tick(seconds) {
      const [unfolds, waits, turns] = [unfold(seconds), wait(seconds), coupler.tick(seconds)];
      if (!moving || !chain) {
        if (unfolds || turns) draw();
        return unfolds || waits || turns;
      }
      moving = chain.step(stepsIn(seconds));
      if (!moving && place.kind === 'falling') {
        place = { kind: 'resting' };
        context.rested();
      }
      draw();
      return true;
    },
  };
}

const skinOf = (hose: HoseFrame | null): string => `${hose?.frost}:${hose?.sweat}`;
