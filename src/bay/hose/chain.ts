/**
 * How a hose lies: a chain of small bodies between the gauge edge and its coupler, like rope on a table. No gravity
 * (the bay is seen from above) and much friction: it stays where it was led, and more hose comes in over the edge as it
 * is pulled farther. Bodies two and four links apart push each other off, which is the stiffness of rubber.
 *
 * Sent home, each body is drawn to its own place along a way by a soft tie, and the coupler end falls there as a damped
 * weight; once all are there they are set on it to the last digit and nothing moves any more.
 *
 * matter-js differs between engines in its last digits, so nothing that counts is decided here: the chain is only
 * looked at for the zones it lies in when it is let go.
 */
import Matter from 'matter-js';
import { distance, measure, stationAt } from '../../layout/course';
import type { PointMm } from '../../layout/layout';

export interface HoseChain {
  /** From the coupler to the gauge edge. */
  points(): PointMm[];
  /** Takes the coupler end to a point. */
  pull(head: PointMm): void;
  /** Lets it fall and slide until it lies along a way. */
  sendHome(way: readonly PointMm[]): void;
  /** Lets time pass in steps of a sixtieth of a second; true while something still moves. */
  step(steps: number): boolean;
  dispose(): void;
}

/** Steps a led hose is given: enough to round its corners, too few to leave the zones it was led through. */
export const LED_STEPS = 3;
const LINKS = 22;
/** Ties between bodies that many links apart, and how hard they hold: the hose's resistance to bending. */
const STIFFENERS = [
  [2, 0.16],
  [4, 0.05],
] as const;
const STEP_MS = 1000 / 60;
/** Faster than this per step something is still moving, mm. */
const RESTLESS_MM = 0.12;
/** Steps after the last pull at which a hose is taken to lie, whatever still trembles in it. */
const PATIENCE_STEPS = 120;
/** Slack over the straight distance once hose has to be paid out. */
const SLACK = 1.04;
/** How softly a body is drawn home; the first steps are softer still, as weight has to get going. */
const HOME_TIE = 0.05;
/** The falling coupler: a damped spring, just short of swinging over; shares per step. */
const FALL_PULL = 0.022;
const FALL_KEPT = 0.74;
/** Nearer than this to its place a body is home, mm. */
const HOME_MM = 1.2;
/** Steps after which whatever is still on its way is set down. */
const HOME_STEPS = 80;

export function createChain(way: readonly PointMm[]): HoseChain {
  const engine = Matter.Engine.create({
    gravity: { x: 0, y: 0 },
    positionIterations: 4,
    velocityIterations: 2,
    constraintIterations: 4,
  });
  const start = resample(way, LINKS + 1);
  const bodies = start.map(([x, y], i) =>
    Matter.Bodies.circle(x, y, 6, {
      isStatic: i === 0 || i === LINKS,
      frictionAir: 0.34,
      collisionFilter: { mask: 0 },
      mass: 1,
      inertia: Number.POSITIVE_INFINITY,
    }),
  );
  let linkMm = lengthOf(start) / LINKS;
  const links = bodies.slice(1).map((body, i) => tie(bodies[i], body, linkMm, 0.9));
  const stiffeners = STIFFENERS.flatMap(([apart, stiffness]) =>
    bodies.slice(apart).map((body, i) => ({ apart, tie: tie(bodies[i], body, linkMm * apart, stiffness) })),
  );
  Matter.Composite.add(engine.world, [...bodies, ...links, ...stiffeners.map((s) => s.tie)]);

  let unpulled = 0;
  let home: Home | null = null;
  /** It lies where it was sent; until it is pulled again nothing in it moves. */
  let asleep = false;
  const setLink = (length: number): void => {
    linkMm = length;
    for (const link of links) link.length = linkMm;
    for (const { apart, tie: stiffener } of stiffeners) stiffener.length = linkMm * apart;
  };
  const leaveHome = (): void => {
    asleep = false;
    if (home) Matter.Composite.remove(engine.world, [...home.ties]);
    home = null;
  };
  const payOut = (): void => {
    const [head, edge] = [bodies[0].position, bodies[LINKS].position];
    const needed = (distance([head.x, head.y], [edge.x, edge.y]) * SLACK) / LINKS;
    if (needed > linkMm) setLink(needed);
  };
  const fallOn = (going: Home): void => {
    const [{ x, y }, [toX, toY]] = [bodies[0].position, going.places[0]];
    going.vx = (going.vx + (toX - x) * FALL_PULL) * FALL_KEPT;
    going.vy = (going.vy + (toY - y) * FALL_PULL) * FALL_KEPT;
    Matter.Body.setPosition(bodies[0], { x: x + going.vx, y: y + going.vy });
    going.steps++;
  };
  const isHome = ({ places, steps }: Home): boolean =>
    steps >= HOME_STEPS || bodies.every(({ position: { x, y } }, i) => distance([x, y], places[i]) < HOME_MM);
  const setDown = ({ places }: Home): void => {
    bodies.forEach((body, i) => {
      Matter.Body.setPosition(body, { x: places[i][0], y: places[i][1] });
      Matter.Body.setVelocity(body, { x: 0, y: 0 });
    });
    leaveHome();
    asleep = true;
  };

  return {
    points: () => bodies.map(({ position }): PointMm => [position.x, position.y]),
    pull([x, y]) {
      unpulled = 0;
      leaveHome();
      Matter.Body.setPosition(bodies[0], { x, y });
      payOut();
    },
    sendHome(to) {
      leaveHome();
      const places = resample(to, LINKS + 1);
      const ties = bodies.slice(1).map((bodyB, i) =>
        Matter.Constraint.create({
          pointA: { x: places[i + 1][0], y: places[i + 1][1] },
          bodyB,
          length: 0,
          stiffness: HOME_TIE,
          damping: 0.1,
        }),
      );
      setLink(lengthOf(places) / LINKS);
      Matter.Composite.add(engine.world, ties);
      home = { places, ties, vx: 0, vy: 0, steps: 0 };
    },
    step(steps) {
      if (home) return goHome(home, steps);
      if (asleep) return false;
      for (let i = 0; i < steps; i++) Matter.Engine.update(engine, STEP_MS);
      unpulled += steps;
      return unpulled < PATIENCE_STEPS && bodies.some((body) => !body.isStatic && body.speed > RESTLESS_MM);
    },
    dispose: () => Matter.Engine.clear(engine),
  };

  function goHome(going: Home, steps: number): boolean {
    for (let i = 0; i < steps; i++) {
      fallOn(going);
      Matter.Engine.update(engine, STEP_MS);
    }
    if (!isHome(going)) return true;
    setDown(going);
    return false;
  }
}

interface Home {
  readonly places: readonly PointMm[];
  readonly ties: readonly Matter.Constraint[];
  /** Of the coupler end, mm a step. */
  vx: number;
  vy: number;
  steps: number;
}

/** How a hose lies that was led along a way and given some steps to come to rest. */
export function laidAlong(way: readonly PointMm[], steps: number): readonly PointMm[] {
  const chain = createChain(way);
  chain.step(steps);
  const points = chain.points();
  chain.dispose();
  return points;
}

const tie = (bodyA: Matter.Body, bodyB: Matter.Body, length: number, stiffness: number): Matter.Constraint =>
  Matter.Constraint.create({ bodyA, bodyB, length, stiffness, damping: 0.1 });

const lengthOf = (points: readonly PointMm[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + distance(points[i], p), 0);

/** `count` points at equal lengths along a polyline. */
export function resample(way: readonly PointMm[], count: number): PointMm[] {
  const course = measure(way);
  return Array.from({ length: count }, (_, i) => {
    const { x, y } = stationAt(course, (course.lengthMm * i) / (count - 1));
    return [x, y];
  });
}

/** A smooth way through corners: each corner cut twice (Chaikin), ends kept. */
export function rounded(way: readonly PointMm[], times = 3): PointMm[] {
  if (times === 0 || way.length < 3) return [...way];
  const cut: PointMm[] = [way[0]];
  for (let i = 1; i < way.length; i++) {
    const [a, b] = [way[i - 1], way[i]];
    if (i > 1) cut.push([a[0] * 0.75 + b[0] * 0.25, a[1] * 0.75 + b[1] * 0.25]);
    if (i < way.length - 1) cut.push([a[0] * 0.25 + b[0] * 0.75, a[1] * 0.25 + b[1] * 0.75]);
  }
  cut.push(way[way.length - 1]);
  return rounded(cut, times - 1);
}
