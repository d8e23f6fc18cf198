/**
 * Whether a layout holds together: every id it names exists, ports stand on tube (never on hose) within 3 mm of their
 * line, ports are far enough apart for two couplers (58 and 64 mm across), routes name zones. Returns sentences for a
 * maintainer, one a finding; an empty list is a sound layout.
 */
import { courseOf, distance, nearestStation } from './course';
import type { Layout, Port } from './layout';

/** Two couplers side by side, with room for a hand. */
const PORTS_APART_MM = 85;
const ON_LINE_MM = 3;

export function layoutFindings(layout: Layout): string[] {
  return [
    ...doubleIds(layout),
    ...lineEnds(layout),
    ...portSeats(layout),
    ...portSpacing(layout),
    ...zoneNames(layout),
  ];
}

function doubleIds(layout: Layout): string[] {
  const seen = new Set<string>();
  return [...layout.parts, ...layout.lines, ...layout.ports]
    .map((thing) => thing.id)
    .filter((id) => seen.size === seen.add(id).size)
    .map((id) => `id "${id}" stands twice`);
}

function lineEnds(layout: Layout): string[] {
  const parts = new Set(layout.parts.map((part) => part.id));
  return layout.lines.flatMap((line) =>
    [line.from, line.to, ...(line.holds ?? [])]
      .filter((id): id is string => id !== undefined && !parts.has(id))
      .map((id) => `line "${line.id}" names part "${id}", which is not there`),
  );
}

function portSeats(layout: Layout): string[] {
  return layout.ports.flatMap((port) =>
    'line' in port.on ? seatOnLine(layout, port, port.on.line) : seatOnPart(layout, port, port.on.part),
  );
}

function seatOnPart(layout: Layout, port: Port, partId: string): string[] {
  return layout.parts.some((part) => part.id === partId)
    ? []
    : [`port "${port.id}" sits on "${partId}", which is not there`];
}

function seatOnLine(layout: Layout, port: Port, lineId: string): string[] {
  const line = layout.lines.find((l) => l.id === lineId);
  if (!line) return [`port "${port.id}" sits on line "${lineId}", which is not there`];
  const course = courseOf(line.way, line.fillet);
  const { alongMm, awayMm } = nearestStation(course, port.at);
  const share = alongMm / course.lengthMm;
  const section = line.sections?.find(([, from, to]) => share >= from && share <= to);
  const away =
    awayMm > ON_LINE_MM ? [`port "${port.id}" is ${awayMm.toFixed(0)} mm off line "${lineId}"`] : [];
  return section && section[0] !== 'tube'
    ? [...away, `port "${port.id}" sits on ${section[0]}, not on tube`]
    : away;
}

function portSpacing(layout: Layout): string[] {
  return layout.ports.flatMap((a, i) =>
    layout.ports
      .slice(i + 1)
      .filter((b) => distance(a.at, b.at) < PORTS_APART_MM)
      .map((b) => `ports "${a.id}" and "${b.id}" are closer than ${PORTS_APART_MM} mm`),
  );
}

function zoneNames(layout: Layout): string[] {
  const zones = new Set(layout.zones.map((zone) => zone.id));
  const ports = new Set(layout.ports.map((port) => port.id));
  return layout.routes.flatMap((route) => [
    ...(ports.has(route.port)
      ? []
      : [`route "${route.id}" starts at port "${route.port}", which is not there`]),
    ...route.through
      .filter((id) => !zones.has(id))
      .map((id) => `route "${route.id}" names zone "${id}", which is not there`),
  ]);
}
