/**
 * How the loop's runs lie: from fitting to fitting by cross lanes and upright lanes, each lane used once. Suction is the
 * thickest of the loop, then discharge, then liquid, as in every car (5/8 and 3/4 in, 1/2 in, 5/16 and 3/8 in tube).
 */
import type { Part, PointMm } from '../layout';
import {
  CHANNELS,
  type Channel,
  CONDENSER_ROWS,
  condenserEnd,
  LOOP_LANES,
  laneX,
  REAR_UNDER_CASE,
  REAR_UNDER_VALVE,
} from './bayFrame';
import type { Draws } from './draws';
import type { LoopRun } from './drill';
import type { Sites } from './sites';

export interface Loop {
  readonly runs: readonly LoopRun[];
  /** Pots that stand on a lane. */
  readonly pots: readonly Part[];
}

const FRONT_SUCTION_MM = 668;
const FRONT_DISCHARGE_MM = 640;
const DETOUR_MM = 700;
const LEAST_STRAIGHT_MM = 64;

type Lane = { readonly channel: Channel; readonly lane: number; readonly x: number };

/** Null where the draws do not go together: then others are drawn. */
export function loopOf(draws: Draws, sites: Sites): Loop | null {
  const free = new Map(CHANNELS.map((channel) => [channel, draws.shuffled(LOOP_LANES)]));
  const take = (channel: Channel): Lane | null => {
    const lane = free.get(channel)?.pop();
    return lane === undefined ? null : { channel, lane, x: laneX(channel, lane) };
  };
  const outward: Channel = sites.lie === 'along-right' ? 'right' : 'left';
  const any = (): Channel => draws.pick(CHANNELS);
  const suctionLanes = [take(sites.lie === 'across' ? any() : outward)];
  if (sites.lie !== 'across' && draws.chance(0.6)) suctionLanes.push(take(outward));
  const discharge = take(sites.lie === 'across' ? any() : outward);
  const liquid = take(any());
  // From the outer lane to the inner one, so that the run does not cross itself.
  const lanes = suctionLanes.filter((lane) => lane !== null).sort((a, b) => a.lane - b.lane);
  if (!discharge || !liquid || lanes.length < suctionLanes.length) return null;
  const loop = laid(draws, sites, lanes, discharge, liquid);
  return loop.runs.every(({ way }) => isLayable(way)) ? loop : null;
}

/** Bends need room, and a run never comes back on itself. */
const isLayable = (way: readonly PointMm[]): boolean =>
  way.every(([x, y], i) => {
    if (i === 0) return true;
    const length = Math.abs(x - way[i - 1][0]) + Math.abs(y - way[i - 1][1]);
    return length >= (i === way.length - 1 || i === 1 ? 22 : LEAST_STRAIGHT_MM);
  });

function laid(draws: Draws, sites: Sites, suction: readonly Lane[], discharge: Lane, liquid: Lane): Loop {
  const wide = draws.chance(0.5);
  const suctionMm = wide ? 19 : 16;
  const liquidMm = wide && draws.chance(0.5) ? 9.5 : 8;
  const [rearA, rearB] = draws.shuffled(sites.metering === 'valve' ? REAR_UNDER_VALVE : REAR_UNDER_CASE);
  const heights = draws.shuffled([9, 9.5, 10]);
  const rows = rowsOf(discharge, liquid);
  const cold = coldRuns(draws, sites, suction, rearA);
  const warm = liquidRuns(draws, sites, liquid, rearB, rows.liquid);
  const run = (id: LoopRun['id'], from: string, to: string, way: readonly PointMm[]): LoopRun => {
    const low = id === 'suction' || id === 'evap-out';
    return {
      id,
      side: low ? 'low' : 'high',
      from,
      to,
      way,
      diameterMm: low ? suctionMm : id === 'discharge' ? 12.7 : liquidMm,
      overBeam: way.some(([, y]) => y > DETOUR_MM + 100),
      z: heights[low ? 0 : id === 'discharge' ? 1 : 2],
    };
  };
  const metering = sites.metering === 'valve' ? 'valve' : 'evaporator';
  const pots = [...(cold.pot ? [cold.pot] : []), ...(warm.pot ? [warm.pot] : [])];
  return {
    pots,
    runs: [
      run('discharge', 'compressor', 'condenser', dischargeWay(sites, discharge, rows.discharge)),
      ...(warm.pot ? [run('drier-in', 'condenser', 'drier', warm.before)] : []),
      run('liquid', warm.pot ? 'drier' : 'condenser', metering, warm.after),
      ...(cold.pot ? [run('evap-out', metering, 'accumulator', cold.before)] : []),
      run('suction', cold.pot ? 'accumulator' : metering, 'compressor', cold.after),
    ],
  };
}

/** Two lines at one end of the condenser: the one from the inner lane lies behind. */
function rowsOf(a: Lane, b: Lane): { readonly discharge: number; readonly liquid: number } {
  const [inner, outer] = CONDENSER_ROWS;
  const first = a.channel !== b.channel || a.lane > b.lane;
  return { discharge: first ? inner : outer, liquid: first ? outer : inner };
}

function dischargeWay(sites: Sites, lane: Lane, row: number): PointMm[] {
  const [x, y] = sites.compressor.discharge;
  const end: PointMm[] = [
    [lane.x, row],
    [condenserEnd(lane.channel), row],
  ];
  if (sites.lie !== 'across') return [[x, y], [lane.x, y], ...end];
  return [[x, y], [x, FRONT_DISCHARGE_MM], [lane.x, FRONT_DISCHARGE_MM], ...end];
}

interface PotRun {
  readonly pot: Part | null;
  readonly before: readonly PointMm[];
  readonly after: readonly PointMm[];
}

/** From the firewall to the compressor; an orifice car's accumulator stands on the first lane. */
function coldRuns(draws: Draws, sites: Sites, lanes: readonly Lane[], rear: number): PotRun {
  const [sx, sy] = sites.firewall.out;
  const [ex, ey] = sites.compressor.suction;
  const x = lanes[0].x;
  const inner = lanes.length > 1 ? lanes[1].x : null;
  const detour: PointMm[] =
    inner === null
      ? []
      : [
          [x, DETOUR_MM],
          [inner, DETOUR_MM],
        ];
  const last = inner ?? x;
  const end: PointMm[] =
    sites.lie === 'across'
      ? [
          [x, FRONT_SUCTION_MM],
          [ex, FRONT_SUCTION_MM],
          [ex, ey],
        ]
      : [...detour, [last, ey], [ex, ey]];
  const head: PointMm[] = [
    [sx, sy],
    [sx, rear],
    [x, rear],
  ];
  if (sites.metering === 'valve') return { pot: null, before: [], after: [...head, ...end] };
  // far to the rear or far to the front of its lane: so that a port has room beside it
  const y = draws.chance(0.6)
    ? rear + draws.whole(70, 84)
    : sites.lie === 'across' || inner !== null
      ? 496
      : 440;
  const at: PointMm = [x, y];
  return {
    pot: {
      id: 'accumulator',
      kind: 'accumulator',
      drawing: 'slim',
      name: 'accumulator',
      at,
      z: 11,
      size: { r: 36 },
      hit: [x - 38, y - 38, 76, 160],
    },
    before: [...head, [x, y - 20]],
    after: [[x, y + 24], ...end],
  };
}

/** From the condenser to the firewall; a valve car has its drier on the lane, or none where the condenser holds it. */
function liquidRuns(draws: Draws, sites: Sites, lane: Lane, rear: number, row: number): PotRun {
  const [ex, ey] = sites.firewall.into;
  const { x } = lane;
  const head: PointMm[] = [
    [condenserEnd(lane.channel), row],
    [x, row],
  ];
  const end: PointMm[] = [
    [x, rear],
    [ex, rear],
    [ex, ey],
  ];
  if (sites.metering === 'orifice' || draws.chance(0.3))
    return { pot: null, before: [], after: [...head, ...end] };
  const y = draws.whole(rear + 130, 620);
  return {
    pot: {
      id: 'drier',
      kind: 'drier',
      name: 'drier',
      at: [x, y],
      z: 10.5,
      size: { r: 32 },
      hit: [x - 34, y - 34, 68, 150],
    },
    before: [...head, [x, y + 14]],
    after: [[x, y - 12], ...end],
  };
}
