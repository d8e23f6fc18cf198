/**
 * The twin as data: everything in the bay that can be focused, in Tab order, with its name and its place on screen. It
 * is made from the same layout and frame as the picture, so nothing is described by hand.
 */

import type { CoupledHose, Layout, PointMm, RectMm } from '../../layout/layout';
import { type Stop, stopsOf } from '../../layout/order';
import { routesOf } from '../../layout/zones';
import { word } from '../../words/words';
import { type BayFrame, hasCoupler } from '../bayFrame';
import type { Hand } from '../gesture/handGesture';
import type { Ready } from '../hands';
import { freeEndAt } from '../hose/freeEndAt';
import {
  CAN,
  CAN_TILT,
  CAN_VALVE,
  couplerId,
  endId,
  hoseOfCoupler,
  inletOfEnd,
  MAT,
  SCALE,
} from '../itemIds';
import {
  canState,
  couplerName,
  couplerState,
  endName,
  lineName,
  partLabel,
  portState,
  routeName,
} from './names';

export interface Entry {
  /** Id of the thing, for intents. */
  readonly id: string;
  /** Unique among entries: a port under different routes shows more than once. */
  readonly key: string;
  readonly label: string;
  readonly hit: RectMm;
  readonly takeable: boolean;
  /** Which lies over which where hit areas overlap; higher is nearer. */
  readonly rank: number;
  readonly slider?: {
    readonly now: number;
    readonly max: number;
    readonly step: number;
    readonly text: string;
  };
  /** Pressing it puts what is held here. */
  readonly puts?: true;
  /** A coupler put here is led along this route. */
  readonly route?: readonly string[];
}

/** Where gear lies at the moment, from the scene. */
export interface GearPlaces {
  coupler(hose: CoupledHose): PointMm | null;
  can(): PointMm | null;
  /** The nut that joins it to its hose. */
  joint(): PointMm | null;
  valve(): PointMm | null;
  dial(): PointMm | null;
  scale(): PointMm | null;
}

const PUT_RANK = 7;
const GEAR_RANK = 6;
const PORT_RANK = 5;
const LINE_RANK = 4;
/** Parts smaller than these (mm²) lie over larger ones. */
const SMALL_PARTS = [4000, 20_000] as const;

function rankOf({ kind, hit: [, , w, h] }: Stop): number {
  if (kind === 'port') return PORT_RANK;
  if (kind === 'line') return LINE_RANK;
  return 1 + SMALL_PARTS.filter((area) => w * h < area).length;
}

const COUPLER_HALF_MM = 44;
const CAN_HALF_MM = 52;
const SMALL_HALF_MM = 34;
const END_HALF_MM = 24;

export function entriesOf(
  layout: Layout,
  frame: BayFrame,
  places: GearPlaces,
  hand: Hand,
  ready: Ready | null = null,
): Entry[] {
  if (hand.doing === 'carrying') return targetEntries(layout, frame, hand.item, hand.valid, places);
  const stops = stopsOf(layout).map((stop) => stopEntry(layout, frame, stop));
  const lastPort = stops.reduce(
    (last, entry, i) => (layout.ports.some((port) => port.id === entry.id) ? i : last),
    0,
  );
  const puts = ready ? targetEntries(layout, frame, ready.item, ready.valid, places) : [];
  return [
    ...stops.slice(0, lastPort + 1),
    ...puts,
    ...gearEntries(layout, frame, places),
    ...stops.slice(lastPort + 1),
  ];
}

function stopEntry(layout: Layout, frame: BayFrame, stop: Stop): Entry {
  const name =
    stop.kind === 'port'
      ? portState(layout, stop.id, frame)
      : stop.kind === 'line'
        ? lineName(layout, stop.id, stop.at, frame.assessed)
        : partLabel(layout, stop.id, stop.at, frame.assessed);
  const label = frame.marked.includes(stop.id) ? word('bay.marked', { name }) : name;
  return { id: stop.id, key: stop.id, label, hit: stop.hit, takeable: false, rank: rankOf(stop) };
}

function gearEntries(layout: Layout, frame: BayFrame, places: GearPlaces): Entry[] {
  const couplers = frame.hoses.filter(hasCoupler).flatMap((hose): Entry[] => {
    const at = places.coupler(hose.id);
    if (!at) return [];
    const id = couplerId(hose.id);
    return [
      {
        id,
        key: id,
        label: couplerState(layout, hose, hose.port === null ? undefined : frame.ports[hose.port]?.bore),
        hit: around(at, COUPLER_HALF_MM),
        takeable: true,
        rank: GEAR_RANK,
      },
    ];
  });
  const ends = (frame.ends ?? []).map((inlet): Entry => {
    const id = endId(inlet);
    const label = word('bay.end.loose', { end: endName(inlet) });
    const hit = around(freeEndAt(layout, frame, inlet), END_HALF_MM);
    return { id, key: id, label, hit, takeable: true, rank: GEAR_RANK };
  });
  return [...couplers, ...ends, ...jointEntries(frame, places), ...canEntries(frame, places)];
}

function jointEntries({ can }: BayFrame, places: GearPlaces): Entry[] {
  const at = places.joint();
  if (!can?.onto || !at) return [];
  const id = endId(can.onto);
  const label = word(`bay.joined.${can.onto}`);
  return [{ id, key: id, label, hit: around(at, END_HALF_MM), takeable: true, rank: GEAR_RANK }];
}

function canEntries({ can }: BayFrame, places: GearPlaces): Entry[] {
  const [at, dial, valve] = [places.can(), places.dial(), places.valve()];
  if (!can || !at || !dial || !valve) return [];
  const open = word('bay.can.sixteenths', { sixteenths: String(can.valveSixteenths) });
  return [
    {
      id: CAN,
      key: CAN,
      label: canState(can),
      hit: around(at, CAN_HALF_MM),
      takeable: true,
      rank: GEAR_RANK,
    },
    {
      id: CAN_TILT,
      key: CAN_TILT,
      label: word('bay.can.tilt'),
      hit: around(dial, SMALL_HALF_MM),
      takeable: false,
      rank: GEAR_RANK,
      slider: { now: can.tiltDeg, max: 180, step: 5, text: `${can.tiltDeg}°` },
    },
    {
      id: CAN_VALVE,
      key: CAN_VALVE,
      label: word('bay.can.valve'),
      hit: around(valve, SMALL_HALF_MM),
      takeable: false,
      rank: GEAR_RANK,
      slider: { now: can.valveSixteenths, max: 16, step: 1, text: open },
    },
  ];
}

/** While something is in the hand only places where it fits are met; a port once for each way to lead the hose. */
function targetEntries(
  layout: Layout,
  frame: BayFrame,
  item: string,
  valid: readonly string[],
  places: GearPlaces,
): Entry[] {
  const hose = hoseOfCoupler(item);
  const inlet = inletOfEnd(item);
  const name = hose ? couplerName(hose) : inlet ? endName(inlet) : word('bay.can.name');
  return valid.flatMap((id): Entry[] => {
    const target = targetHit(layout, frame, id, places);
    if (!target) return [];
    const place = placeName(layout, frame, id);
    const routes = hose && layout.ports.some((port) => port.id === id) ? routesOf(layout, id) : [];
    if (routes.length === 0) {
      return [
        {
          id,
          key: `put:${id}`,
          label: word('bay.put', { item: name, place }),
          hit: target,
          takeable: false,
          rank: PUT_RANK,
          puts: true,
        },
      ];
    }
    return routes.map(
      (route): Entry => ({
        id,
        key: `put:${id}/${route.id}`,
        label: word('bay.put', { item: name, place: `${place}, ${routeName(route.id)}` }),
        hit: target,
        takeable: false,
        rank: PUT_RANK,
        puts: true,
        route: route.through,
      }),
    );
  });
}

function placeName(layout: Layout, frame: BayFrame, id: string): string {
  if (id === MAT) return word('bay.mat');
  if (id === SCALE) return word('bay.scale');
  if (id === CAN) return word('bay.can.place');
  const inlet = inletOfEnd(id);
  if (inlet) return word(`bay.onto.${inlet}`);
  const stop = stopsOf(layout).find((s) => s.id === id);
  return stop ? stopEntry(layout, frame, stop).label : id;
}

function targetHit(layout: Layout, frame: BayFrame, id: string, places: GearPlaces): RectMm | null {
  if (id === MAT) return layout.mat.rect;
  if (id === SCALE) return around(places.scale() ?? layout.mat.canAt, CAN_HALF_MM);
  if (id === CAN) return around(places.can() ?? layout.mat.canAt, CAN_HALF_MM);
  const inlet = inletOfEnd(id);
  if (inlet) return around(freeEndAt(layout, frame, inlet), END_HALF_MM);
  return stopsOf(layout).find((stop) => stop.id === id)?.hit ?? null;
}

const around = ([x, y]: PointMm, half: number): RectMm => [x - half, y - half, 2 * half, 2 * half];
