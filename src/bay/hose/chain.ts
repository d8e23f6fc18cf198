/**
 * How a hose lies: a chain of small bodies between the gauge edge and its coupler, like rope on a table. No gravity
 * (the bay is seen from above) and much friction: it stays where it was led, and more hose comes in over the edge as it
 * is pulled farther. Bodies two and four links apart push each other off, which is the stiffness of rubber.
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
  const payOut = (): void => {
    const [head, edge] = [bodies[0].position, bodies[LINKS].position];
    const needed = (distance([head.x, head.y], [edge.x, edge.y]) * SLACK) / LINKS;
    if (needed <= linkMm) return;
    linkMm = needed;
    for (const link of links) link.length = linkMm;
    for (const { apart, tie: stiffener } of stiffeners) stiffener.length = linkMm * apart;
  };

  return {
    points: () => bodies.map(({ position }): PointMm => [position.x, position.y]),
    pull([x, y]) {
      unpulled = 0;
      Matter.Body.setPosition(bodies[0], { x, y });
      payOut();
    },
    step(steps) {
      for (let i = 0; i < steps; i++) Matter.Engine.update(engine, STEP_MS);
      unpulled += steps;
      return unpulled < PATIENCE_STEPS && bodies.some((body) => !body.isStatic && body.speed > RESTLESS_MM);
    },
    dispose: () => Matter.Engine.clear(engine),
  };
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
