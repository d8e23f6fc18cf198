/**
 * The bay of a seed and a level: sites, runs, ports, joints, other pipes and scenery, one after the other, each drawn by
 * key. Draws that do not go together are drawn again under the next attempt's key; the count of attempts is bounded and
 * a test walks 10,000 seeds.
 */
import type { Layout, Line, Part, PointMm, Port } from '../layout';
import { SHELL, VIEW } from './bayFrame';
import { coversFor } from './covers';
import { type CutRun, cutRun } from './cutRun';
import { type Decoys, decoysFor } from './decoys';
import { createDraws, type Draws } from './draws';
import type {
  DrillBay,
  DrillCap,
  DrillLevel,
  DrillPart,
  DrillPort,
  DrillQuestion,
  Metering,
  Side,
} from './drill';
import { apart, toRect, toWay } from './geometry';
import { type Loop, loopOf } from './runs';
import { sceneryFor } from './scenery';
import { type Sites, sitesOf } from './sites';
import { nearestSeen, type Station, stationsFor } from './stations';

const MOST_ATTEMPTS = 400;
const PAINTS = ['sage', 'pearl', 'ochre', 'mulberry'] as const;
const CROSSING_MM = 46;
/** From the middle of an orifice tube to the corner of where it is found. */
const ORIFICE_REACH_MM = 44;

/** Throws `RangeError` where no attempt came out, which no seed of the tests does. */
export function drillBay(seed: number, level: DrillLevel): DrillBay {
  const metering: Metering = createDraws(seed, `${level}`).chance(0.5) ? 'valve' : 'orifice';
  for (let attempt = 0; attempt < MOST_ATTEMPTS; attempt++) {
    const bay = attemptAt(createDraws(seed, `${level}.${attempt}`), metering, seed, level);
    if (bay) return bay;
  }
  throw new RangeError(`no bay for seed ${seed} at level ${level}`);
}

function attemptAt(draws: Draws, metering: Metering, seed: number, level: DrillLevel): DrillBay | null {
  const sites = sitesOf(draws, metering);
  const loop = loopOf(draws, sites);
  if (!loop || !isClear(loop)) return null;
  const stations = stationsFor(draws, loop.runs, [...sites.parts, ...loop.pots]);
  if (!stations) return null;
  const seats = [stations.low, stations.high];
  const cuts = cutAll(draws, level, sites, loop, seats);
  if (!cuts) return null;
  const others = decoysFor(draws, sites, loop.runs, loop.pots, seats);
  if (!others) return null;
  return put(draws, seed, level, sites, loop, stations, cuts, others);
}

/** No run passes under a pot that is not its own. */
const isClear = ({ runs, pots }: Loop): boolean =>
  pots.every(({ id, hit }) =>
    runs.every(
      ({ from, to, way }) =>
        from === id || to === id || !hit || way.every((_, i) => i === 0 || !meets(hit, way[i - 1], way[i])),
    ),
  );

const meets = ([x, y, w, h]: NonNullable<Part['hit']>, a: PointMm, b: PointMm): boolean =>
  Math.min(a[0], b[0]) < x + w + 16 &&
  Math.max(a[0], b[0]) > x - 16 &&
  Math.min(a[1], b[1]) < y + h + 16 &&
  Math.max(a[1], b[1]) > y - 16;

function cutAll(
  draws: Draws,
  level: DrillLevel,
  sites: Sites,
  { runs, pots }: Loop,
  seats: readonly Station[],
): readonly CutRun[] | null {
  const cuts: CutRun[] = [];
  const seen = [...sites.parts, ...pots];
  const nearest = seats.map(({ at }) => nearestSeen(at, seen)?.awayMm ?? 0);
  const tooNear = (spot: PointMm): boolean =>
    seats.some(({ at }, i) => apart(at, spot) - ORIFICE_REACH_MM < nearest[i]);
  for (const run of runs) {
    const others = runs.filter((other) => other !== run);
    const inTheWay = (at: PointMm): boolean =>
      others.some(({ way }) => toWay(at, way) < CROSSING_MM) ||
      pots.some(({ hit }) => hit && meets(hit, at, at));
    const ports = seats.filter((seat) => seat.run === run && seat.pot === undefined).map(({ at }) => at);
    const needsOrifice = sites.metering === 'orifice' && run.id === 'liquid';
    const cut = cutRun(draws, level, run, ports, inTheWay, needsOrifice, tooNear);
    if (!cut) return null;
    cuts.push(cut);
  }
  return cuts;
}

const LOOP_PARTS: Readonly<Record<string, DrillPart>> = {
  compressor: 'compressor',
  condenser: 'condenser',
  drier: 'drier',
  valve: 'valve',
  evaporator: 'evaporator',
  accumulator: 'accumulator',
};

function put(
  draws: Draws,
  seed: number,
  level: DrillLevel,
  sites: Sites,
  loop: Loop,
  stations: Readonly<Record<Side, Station>>,
  cuts: readonly CutRun[],
  others: Decoys,
): DrillBay {
  const lines: Line[] = [...cuts.flatMap((cut) => cut.lines), ...others.lines];
  const parts: Part[] = [...sites.parts, ...loop.pots, ...cuts.flatMap((cut) => cut.joints), ...others.parts];
  const ways = lines.map(({ way }) => way.map(([x, y]): PointMm => [x, y]));
  const taken = parts.flatMap((part) => (part.hit ? [part.hit] : []));
  const scenery = sceneryFor(draws, ways, taken);
  const known = Object.fromEntries(
    parts.flatMap(({ id }): [string, DrillPart][] => (LOOP_PARTS[id] ? [[id, LOOP_PARTS[id]]] : [])),
  );
  const seats = seatsOf(draws, level, stations, lines, parts, others);
  const asked = seats.ports.map(({ at }) => at);
  const covers = coversFor(draws, level, loop.runs, asked);
  const layout: Layout = {
    id: `drill-${level}-${seed}`,
    view: VIEW,
    paint: draws.pick(PAINTS),
    body: draws.pick(['hatch', 'sedan']),
    pipeScale: 1.4,
    shell: { ...SHELL, hold: draws.pick(['rod', 'struts']) },
    parts: [...parts, ...scenery, ...covers.parts],
    lines,
    ports: seats.ports,
    zones: [],
    routes: [],
    mat: NO_MAT,
    edge: { x: AWAY_MM, low: 0, high: 0, charging: 0, utility: 0 },
  };
  return {
    seed,
    level,
    metering: sites.metering,
    engine: sites.lie,
    layout,
    loopParts: Object.assign(known, ...cuts.map((cut) => cut.kinds)),
    decoys: others.decoys,
    covers: covers.covers,
    ports: seats.drill,
    question: questionOf(draws, seats.drill),
  };
}

const AWAY_MM = -4000;
/** Nothing is coupled here: the mat lies out of the picture. */
const NO_MAT: Layout['mat'] = {
  side: 'left',
  rect: [AWAY_MM, AWAY_MM, 20, 20],
  canAt: [AWAY_MM, AWAY_MM],
  rest: {
    low: [AWAY_MM, AWAY_MM],
    high: [AWAY_MM, AWAY_MM],
    charging: [AWAY_MM, AWAY_MM],
    utility: [AWAY_MM, AWAY_MM],
  },
};

const LETTERS = ['A', 'B', 'C'] as const;

/** Both ports, and at the last level a capped test fitting on another system's pipe; letters say nothing. */
function seatsOf(
  draws: Draws,
  level: DrillLevel,
  stations: Readonly<Record<Side, Station>>,
  lines: readonly Line[],
  parts: readonly Part[],
  others: Decoys,
): { readonly ports: readonly Port[]; readonly drill: readonly DrillPort[] } {
  const seats: Seat[] = [seatOf('low', stations.low, lines), seatOf('high', stations.high, lines)];
  const test = level === 4 ? testFitting(others, parts) : null;
  if (test) seats.push({ side: null, at: test.at, on: { line: test.line } });
  const letters = draws.shuffled(LETTERS.slice(0, seats.length));
  const ordered = seats
    .map((seat, i) => ({ ...seat, letter: letters[i], cap: capFor(draws, level) }))
    .sort((a, b) => (a.letter < b.letter ? -1 : 1));
  return {
    ports: ordered.map(({ letter, at, on }) => ({
      id: idOf(letter),
      boreMm: FITTING_MM,
      at,
      on,
      ...('line' in on ? { stub: true } : {}),
    })),
    drill: ordered.map(({ letter, side, cap }) => ({ id: idOf(letter), letter, side, cap })),
  };
}

/** All fittings of the drill are drawn alike: a size that goes with the side would answer without a trace. */
const FITTING_MM = 13;

const idOf = (letter: string): string => `port-${letter.toLowerCase()}`;

interface Seat {
  readonly side: Side | null;
  readonly at: PointMm;
  readonly on: Port['on'];
}

function seatOf(side: Side, { run, at, pot }: Station, lines: readonly Line[]): Seat {
  if (pot !== undefined) return { side, at, on: { part: pot } };
  const line = lines.find(({ id, way }) => id.startsWith(`${run.id}-`) && toWay(at, pointsOf(way)) < 1);
  if (!line) throw new RangeError(`no line of run "${run.id}" under its port`);
  return { side, at, on: { line: line.id } };
}

const pointsOf = (way: Line['way']): PointMm[] => way.map(([x, y]): PointMm => [x, y]);

const FROM_BEND_MM = 44;
const TEST_ROOM_MM = 24;

/** On the level stretch of a fuel pipe, where a car has its test fitting. */
function testFitting(
  { decoys, lines }: Decoys,
  parts: readonly Part[],
): { readonly at: PointMm; readonly line: string } | null {
  const decoy = decoys.find(({ kind }) => kind === 'fuel');
  const way = lines.find(({ id }) => id === decoy?.line)?.way;
  if (!decoy || !way) return null;
  const at: PointMm = [way[1][0] - FROM_BEND_MM, way[1][1]];
  const isFree = parts.every(({ hit }) => !hit || toRect(at, hit) > TEST_ROOM_MM);
  return isFree ? { line: decoy.line, at } : null;
}

/** At first caps say nothing; later a letter is as often the other side's as its own. */
function capFor(draws: Draws, level: DrillLevel): DrillCap {
  if (level <= 2) return 'blank';
  const caps: readonly DrillCap[] = ['letter', 'swapped', 'blank'];
  return draws.pick(level === 3 ? caps : [...caps, 'missing']);
}

function questionOf(draws: Draws, ports: readonly DrillPort[]): DrillQuestion {
  const loop = ports.filter(({ side }) => side !== null);
  if (draws.chance(0.5)) return { kind: 'side', port: draws.pick(loop).id };
  return { kind: 'which', ports: ports.map(({ id }) => id) };
}
