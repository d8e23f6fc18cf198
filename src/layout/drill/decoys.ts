/**
 * Pipes that are no part of the loop, laid beside the ports and elsewhere: heater hoses from the firewall to the engine,
 * radiator hoses, steering and fuel pipes. Each begins and ends where such a pipe does, and none is of bright tube.
 * Outside diameters are common practice, no source.
 */
import type { Line, Part, PointMm } from '../layout';
import { type Channel, laneAt, laneX } from './bayFrame';
import type { Draws } from './draws';
import type { Decoy, DecoyKind, LoopRun } from './drill';
import { rectToWay, toWay } from './geometry';
import type { Sites } from './sites';
import type { Station } from './stations';

export interface Decoys {
  readonly lines: readonly Line[];
  readonly decoys: readonly Decoy[];
  readonly parts: readonly Part[];
}

interface Laid {
  readonly kind: DecoyKind;
  readonly way: readonly PointMm[];
  readonly diameterMm: number;
}

/** Share of bays in which each port has another pipe beside it. */
const BESIDE_SHARE = 0.92;
const PORT_ROOM_MM = 42;
/** A pipe in the next lane may go a little under a pot's edge, not under the pot. */
const POT_ROOM_MM = 10;
const LEVEL_ROOM_MM = 46;
const IN_VIEW_MM = 100;
const LANES = 6;
/** The thickest pipe of a bay lies beside one port or the other, as a coin falls. */
const THICK_MM = 44;
const OTHER_MM = [28, 30, 32];
const RADIATOR_NECKS_MM = [752, 704];
/** Where a hose to the steering's cooler goes under the radiator support. */
const UNDER_BEAM_MM = 792;

/** Null where a port that is to have a pipe beside it has no room for one. */
export function decoysFor(
  draws: Draws,
  sites: Sites,
  runs: readonly LoopRun[],
  pots: readonly Part[],
  stations: readonly Station[],
): Decoys | null {
  const ports = stations.map(({ at }) => at);
  const beside = stations.filter(({ pot }) => pot === undefined).map(({ at }) => at);
  const laid: Laid[] = [mainHose(sites)];
  const fits = (one: Laid): boolean =>
    ports.every((port) => toWay(port, one.way) >= PORT_ROOM_MM) &&
    pots.every(({ hit }) => !hit || rectToWay(hit, one.way) >= POT_ROOM_MM) &&
    !besideLevel(
      one.way,
      runs.map(({ way }) => way),
    ) &&
    !besideLevel(
      one.way,
      laid.map(({ way }) => way),
    );
  const isBeside = draws.chance(BESIDE_SHARE);
  for (const [i, port] of (isBeside ? draws.shuffled(beside) : []).entries()) {
    const found = draws.shuffled(besidePort(draws, sites, port, i === 0)).find(fits);
    if (!found) return null;
    laid.push(found);
  }
  const extra = thin(draws, sites);
  if (fits(extra)) laid.push(extra);
  return {
    lines: laid.map((one, i) => lineOf(one, i)),
    decoys: laid.map(({ kind }, i) => ({ line: `other-${i + 1}`, kind })),
    parts: laid.flatMap(({ way, kind }, i) => grommet(way[0], kind, i)),
  };
}

const mainHose = (sites: Sites): Laid => ({
  kind: 'radiator',
  diameterMm: 36,
  way: [
    [sites.radiatorHoseX, sites.engine.bottom],
    [sites.radiatorHoseX, 752],
  ],
});

/** Ways in the two lanes beside a port, from the firewall or to the radiator, past the port. */
function besidePort(draws: Draws, sites: Sites, [x, y]: PointMm, isThick: boolean): Laid[] {
  const at = laneAt(x);
  if (!at) return [];
  return [at.lane - 1, at.lane + 1]
    .filter((lane) => lane >= 0 && lane < LANES)
    .flatMap((lane) => waysIn(draws, sites, at.channel, laneX(at.channel, lane), y, isThick));
}

function waysIn(
  draws: Draws,
  sites: Sites,
  channel: Channel,
  x: number,
  y: number,
  isThick: boolean,
): Laid[] {
  const { top, bottom } = sites.engine;
  const edge = channel === 'left' ? sites.engine.left : sites.engine.right;
  const down = Math.max(top, y + IN_VIEW_MM) + draws.whole(0, 30);
  const up = Math.min(bottom, y - IN_VIEW_MM) - draws.whole(0, 30);
  const diameterMm = isThick ? THICK_MM : draws.pick(OTHER_MM);
  const ways: Laid[] = [];
  if (down <= bottom) {
    const kind = isThick ? 'coolant' : 'heater';
    ways.push({
      kind,
      diameterMm,
      way: [
        [x, 116],
        [x, down],
        [edge, down],
      ],
    });
  }
  if (up >= top) {
    const front = draws.pick(RADIATOR_NECKS_MM);
    ways.push({
      kind: 'radiator',
      diameterMm,
      way: [
        [edge, up],
        [x, up],
        [x, front],
        [channel === 'left' ? 448 : 1232, front],
      ],
    });
  }
  ways.push({
    kind: isThick ? 'coolant' : 'steering',
    diameterMm,
    way: [
      [x, 116],
      [x, UNDER_BEAM_MM],
    ],
  });
  return ways;
}

/** A thin pipe at the firewall, for company. */
function thin(draws: Draws, sites: Sites): Laid {
  const x = draws.whole(1000, 1180);
  const y = draws.whole(140, 170);
  return {
    kind: draws.pick<DecoyKind>(['fuel', 'brake']),
    diameterMm: draws.pick([6, 8, 10]),
    way: [
      [x, 112],
      [x, y],
      [sites.engine.left + 200, y],
      [sites.engine.left + 200, y + 70],
    ],
  };
}

/** Two pipes side by side across the bay are hard to tell apart: not within a hand's breadth. */
function besideLevel(way: readonly PointMm[], others: readonly (readonly PointMm[])[]): boolean {
  return way.some((b, i) => {
    if (i === 0) return false;
    const a = way[i - 1];
    return others.some((other) => other.some((d, j) => j > 0 && areBeside(a, b, other[j - 1], d)));
  });
}

function areBeside(a: PointMm, b: PointMm, c: PointMm, d: PointMm): boolean {
  const across = (u: 0 | 1, v: 0 | 1): boolean =>
    a[v] === b[v] &&
    c[v] === d[v] &&
    Math.abs(a[v] - c[v]) < LEVEL_ROOM_MM &&
    Math.min(a[u], b[u]) < Math.max(c[u], d[u]) &&
    Math.min(c[u], d[u]) < Math.max(a[u], b[u]);
  return across(0, 1) || across(1, 0);
}

function lineOf({ kind, way, diameterMm }: Laid, i: number): Line {
  const isPipe = kind === 'fuel' || kind === 'brake';
  return {
    id: `other-${i + 1}`,
    diameterMm,
    z: kind === 'radiator' ? 8 : 7,
    lift: 22,
    fillet: isPipe ? 20 : 42,
    way,
    sections: [[isPipe ? 'iron' : 'rubber', 0, 1]],
    ends: 'round',
    ...(isPipe ? {} : { bands: [0.03, 0.97] }),
  };
}

const grommet = (at: PointMm, kind: DecoyKind, i: number): Part[] =>
  kind === 'radiator'
    ? []
    : [{ id: `grommet-${i + 1}`, kind: 'grommet', at: [at[0], 110], z: 5.5, size: { r: 22 } }];
