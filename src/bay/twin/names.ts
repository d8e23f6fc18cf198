/**
 * What the twin calls things. In an assessed session lines and parts of the loop have no names of their own and a port
 * is told by its bore and its place; otherwise names come from the words by the layout's keys.
 */

import { letterOf } from '../../layout/bores';
import type { BoreMm, HoseId, Layout, PointMm } from '../../layout/layout';
import { type LineFacts, lineFacts } from '../../layout/place';
import { lineOf, partOf, portOf } from '../../layout/trace';
import { isTelltale, lineByPlace, partByPlace, portByPlace } from '../../twin/placeNames';
import { formatNumber } from '../../units/format';
import { isWordId, say, word } from '../../words/words';
import type { BayFrame, CanFrame, CanInlet, HoseFrame } from '../bayFrame';

/** A name that comes out of data: its word if there is one, else the key itself. */
function named(group: 'part' | 'line' | 'route', key: string): string {
  const id = `bay.${group}.${key}`;
  return isWordId(id) ? say({ id }) : key;
}

const partName = (layout: Layout, id: string): string => named('part', partOf(layout, id).name ?? id);

export function partLabel(layout: Layout, id: string, at: PointMm, assessed: boolean): string {
  return assessed && isTelltale(layout, id) ? partByPlace(layout, at) : partName(layout, id);
}

export function lineName(layout: Layout, id: string, at: PointMm, assessed: boolean): string {
  const line = lineOf(layout, id);
  if (assessed) return lineByPlace(layout, id, at);
  const facts: LineFacts = lineFacts(line);
  return word('bay.line.facts', {
    name: named('line', id),
    from: partName(layout, facts.from),
    to: partName(layout, facts.to),
    diameter: `${formatNumber(facts.diameterMm, 0.1)} mm`,
    length: `${formatNumber(facts.lengthMm / 1000, 0.01)} m`,
  });
}

/** A port with what is to be seen on it, never what that means. */
export function portState(layout: Layout, id: string, frame: BayFrame): string {
  const { cap = 'blank', bore, covered } = frame.ports[id] ?? {};
  const port = portByPlace(layout, portOf(layout, id), bore);
  if (covered) return word('bay.port.covered', { port });
  const hose = frame.hoses.find((h) => h.port === id);
  if (hose) return word('bay.port.coupled', { port, coupler: couplerName(hose.id) });
  switch (cap) {
    case 'missing':
      return word('bay.port.capOff', { port });
    case 'blank':
      return word('bay.port.capOn', { port });
    case 'shape':
      return word('bay.port.capShaped', { port });
    default: {
      const own = letterOf(bore ?? portOf(layout, id).boreMm);
      const other = own === 'L' ? 'H' : 'L';
      return word('bay.port.capLettered', { port, letter: cap === 'swapped' ? other : own });
    }
  }
}

export const couplerName = (hose: HoseId): string => word(`bay.coupler.${hose}`);

export const endName = (inlet: CanInlet): string => word(`bay.end.${inlet}`);

export function couplerState(layout: Layout, hose: HoseFrame, bore?: BoreMm): string {
  const coupler = couplerName(hose.id);
  if (hose.caught) return word('bay.coupler.caught', { coupler });
  if (hose.port === null) return word('bay.coupler.loose', { coupler });
  return word(hose.open ? 'bay.coupler.open' : 'bay.coupler.shut', {
    coupler,
    port: portByPlace(layout, portOf(layout, hose.port), bore),
  });
}

export function canState(can: CanFrame): string {
  if (can.tiltDeg === 0) return word('bay.can.upright');
  if (can.tiltDeg === 180) return word('bay.can.inverted');
  return word('bay.can.tilted', { degrees: `${can.tiltDeg}°` });
}

export const routeName = (routeId: string): string => named('route', routeId);
