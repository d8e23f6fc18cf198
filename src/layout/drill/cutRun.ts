/**
 * A run cut into lines by what sits in it: bolted blocks, unions, mufflers, a sight glass, an orifice tube. Each joint is
 * a part of the loop, so tracing meets it; lines between are tube, or tube with a length of hose.
 */
import type { Line, Part, PointMm, Section } from '../layout';
import type { Draws } from './draws';
import type { DrillLevel, DrillPart, LoopRun } from './drill';
import { apart } from './geometry';

export interface CutRun {
  readonly lines: readonly Line[];
  readonly joints: readonly Part[];
  readonly kinds: Readonly<Record<string, DrillPart>>;
}

interface Spot {
  /** Stretch of the way it lies on: the one that ends at this way-point. */
  readonly stretch: number;
  readonly at: PointMm;
  readonly along: number;
}

const FROM_BEND_MM = 44;
const FROM_PORT_MM = 64;
const APART_MM = 88;
/** No joint on the beam or in front of it. */
const FRONT_MOST_MM = 714;
const HOSE_FROM_MM = 150;
const ORIFICE_TRIES = 16;
/** Least and most joints of a run; short runs hold fewer. */
const JOINTS: Readonly<Record<DrillLevel, readonly [least: number, most: number]>> = {
  1: [0, 2],
  2: [1, 5],
  3: [2, 7],
  4: [3, 8],
};
const IN_LINE: Readonly<Record<LoopRun['id'], readonly DrillPart[]>> = {
  suction: ['block', 'union', 'muffler', 'switch', 'filter'],
  'evap-out': ['block', 'union', 'switch'],
  discharge: ['block', 'union', 'muffler', 'switch'],
  'drier-in': ['block', 'union', 'switch'],
  liquid: ['block', 'union', 'glass', 'switch', 'filter'],
};

/**
 * `ports` stand on this run; `inTheWay` are points where other pipes cross; `tooNear` are those where an orifice tube
 * would be the part nearest to a port. Null where one has to be in the run and there is no room for it behind its ports.
 */
export function cutRun(
  draws: Draws,
  level: DrillLevel,
  run: LoopRun,
  ports: readonly PointMm[],
  inTheWay: (at: PointMm) => boolean,
  needsOrifice: boolean,
  tooNear: (at: PointMm) => boolean,
): CutRun | null {
  const room = roomOn(run.way);
  const isFree = ({ at }: Spot): boolean =>
    !inTheWay(at) && ports.every((port) => apart(port, at) >= FROM_PORT_MM);
  const spots: (Spot & { readonly kind: DrillPart })[] = [];
  if (needsOrifice) {
    const behind = drawnSpots(draws, room, ORIFICE_TRIES).find(
      (spot) =>
        isFree(spot) && !tooNear(spot.at) && ports.every((port) => spot.along > alongOf(run.way, port)),
    );
    if (!behind) return null;
    spots.push({ ...behind, kind: 'orifice' });
  }
  const wanted = draws.whole(...JOINTS[level]) + spots.length;
  for (const spot of drawnSpots(draws, room, wanted * 3)) {
    if (spots.length >= wanted) break;
    const isApart = spots.every(({ along }) => Math.abs(along - spot.along) >= APART_MM);
    if (isApart && isFree(spot)) spots.push({ ...spot, kind: draws.pick(IN_LINE[run.id]) });
  }
  return cutAt(
    draws,
    run,
    ports,
    spots.sort((a, b) => a.along - b.along),
  );
}

/** Where on a way a joint may sit: a straight between its bends. */
interface Room {
  readonly stretch: number;
  readonly a: PointMm;
  readonly b: PointMm;
  readonly before: number;
  readonly length: number;
}

function roomOn(way: readonly PointMm[]): Room[] {
  const room: Room[] = [];
  let before = 0;
  for (let i = 1; i < way.length; i++) {
    const [a, b] = [way[i - 1], way[i]];
    const length = apart(a, b);
    if (length > 2 * FROM_BEND_MM) room.push({ stretch: i, a, b, before, length });
    before += length;
  }
  return room;
}

/** Spots drawn one after the other, a long straight as often as it is long; none on the beam or in front of it. */
function drawnSpots(draws: Draws, room: readonly Room[], count: number): Spot[] {
  const total = room.reduce((sum, { length }) => sum + length - 2 * FROM_BEND_MM, 0);
  const spots: Spot[] = [];
  for (let i = 0; i < count; i++) {
    let rest = draws.whole(0, Math.floor(total));
    for (const { stretch, a, b, before, length } of room) {
      const most = length - 2 * FROM_BEND_MM;
      if (rest <= most) {
        const s = FROM_BEND_MM + rest;
        const at: PointMm = [
          Math.round(a[0] + ((b[0] - a[0]) * s) / length),
          Math.round(a[1] + ((b[1] - a[1]) * s) / length),
        ];
        if (at[1] <= FRONT_MOST_MM) spots.push({ stretch, at, along: before + s });
        break;
      }
      rest -= most;
    }
  }
  return spots;
}

function alongOf(way: readonly PointMm[], [x, y]: PointMm): number {
  let before = 0;
  for (let i = 1; i < way.length; i++) {
    const [a, b] = [way[i - 1], way[i]];
    const length = apart(a, b);
    const past = apart(a, [x, y]);
    if (Math.abs(past + apart(b, [x, y]) - length) < 1) return before + past;
    before += length;
  }
  return before;
}

function cutAt(
  draws: Draws,
  run: LoopRun,
  ports: readonly PointMm[],
  spots: readonly (Spot & { readonly kind: DrillPart })[],
): CutRun {
  const joints = spots.map((spot, i) => jointPart(`${run.id}-${spot.kind}-${i + 1}`, spot, run));
  const ways = waysBetween(run.way, spots);
  const lines = ways.map((way, i): Line => {
    const hasPort = ports.some((port) => isOn(way, port));
    return {
      id: `${run.id}-${i + 1}`,
      from: i === 0 ? run.from : joints[i - 1].id,
      to: i === joints.length ? run.to : joints[i].id,
      diameterMm: run.diameterMm,
      z: run.z,
      lift: run.side === 'low' ? 34 : 24,
      fillet: run.diameterMm > 12 ? 30 : 22,
      ...(way.some(([, y]) => y > 800) ? { overBeam: true } : {}),
      way,
      sections: hasPort ? TUBE : sectionsFor(draws, run, way),
    };
  });
  return { lines, joints, kinds: Object.fromEntries(spots.map(({ kind }, i) => [joints[i].id, kind])) };
}

const TUBE: readonly Section[] = [['tube', 0, 1]];
/** A hose begins and ends this far from a bend or joint. */
const HOSE_FROM_END_MM = 40;

/**
 * Vapour lines have a length of hose, for the engine moves; liquid lines and what crosses the beam are tube. It lies on
 * the longest straight, so that no crimp sits in a bend; on the last one it may go on to the joint.
 */
function sectionsFor(draws: Draws, run: LoopRun, way: readonly PointMm[]): readonly Section[] {
  const isVapour = run.id === 'suction' || run.id === 'discharge';
  const straights = way.slice(1).map((at, i) => apart(way[i], at));
  const longest = Math.max(...straights);
  const isFree = isVapour && longest >= HOSE_FROM_MM && way.every(([, y]) => y < 800);
  if (!isFree || !draws.chance(0.7)) return TUBE;
  const i = straights.indexOf(longest);
  const length = straights.reduce((sum, one) => sum + one, 0);
  const before = straights.slice(0, i).reduce((sum, one) => sum + one, 0);
  const from = share(before + HOSE_FROM_END_MM, length);
  const to = share(before + longest - HOSE_FROM_END_MM, length);
  if (i === straights.length - 1 && draws.chance(0.5))
    return [
      ['tube', 0, from],
      ['hose', from, 1],
    ];
  return [
    ['tube', 0, from],
    ['hose', from, to],
    ['tube', to, 1],
  ];
}

const share = (mm: number, of: number): number => Math.round((1000 * mm) / of) / 1000;

function waysBetween(way: readonly PointMm[], spots: readonly Spot[]): PointMm[][] {
  const ways: PointMm[][] = [[way[0]]];
  let next = 0;
  for (let i = 1; i < way.length; i++) {
    for (; next < spots.length && spots[next].stretch === i; next++) {
      ways[ways.length - 1].push(spots[next].at);
      ways.push([spots[next].at]);
    }
    ways[ways.length - 1].push(way[i]);
  }
  return ways;
}

const isOn = (way: readonly PointMm[], at: PointMm): boolean =>
  way.some(
    (point, i) => i > 0 && Math.abs(apart(way[i - 1], at) + apart(at, point) - apart(way[i - 1], point)) < 1,
  );

const JOINT_HALF_MM = 30;
const DRAWN_AS: Partial<Readonly<Record<DrillPart, string>>> = {
  glass: 'sight-block',
  switch: 'switch-block',
  filter: 'line-filter',
};

function jointPart(
  id: string,
  { at, stretch, kind }: Spot & { readonly kind: DrillPart },
  run: LoopRun,
): Part {
  const level = run.way[stretch][1] === run.way[stretch - 1][1];
  const [x, y] = at;
  const hit = [x - JOINT_HALF_MM, y - JOINT_HALF_MM, 2 * JOINT_HALF_MM, 2 * JOINT_HALF_MM] as const;
  if (kind === 'block' && level)
    return { id, kind, drawing: 'tall', name: kind, at, z: 12, size: { w: 34, h: 50 }, hit };
  if (kind === 'block') return { id, kind, name: kind, at, z: 12, size: { w: 50, h: 34 }, hit };
  const size = { turnDeg: level ? 90 : 0, d: run.diameterMm };
  return { id, kind: DRAWN_AS[kind] ?? kind, name: kind, at, z: 12, size, hit };
}
