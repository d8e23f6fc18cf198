/** How ports, hoses, routes and zones are called in words. A port is told by its bore and the thing it stands on, never by its side. */
import type { BoreMm, HoseRoute, Layout, Port } from '../layout/layout';
import { tracePort } from '../layout/trace';
import { nameOf as plainName } from '../twin/nameOf';
import { portByPlace } from '../twin/placeNames';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

const placeOf = (port: Port): string => ('line' in port.on ? port.on.line : port.on.part);

/**
 * A port by bore and place, until its line has been followed: then also by what it stands on. Explore names it at once;
 * an assessed session never does.
 */
export function portWords(
  layout: Layout,
  port: Port,
  known: boolean,
  nameOf: (id: string) => string,
  bore: BoreMm = port.boreMm,
): string {
  if (!known) return portByPlace(layout, port, bore);
  return word('panels.port.name', { bore: String(bore), place: nameOf(placeOf(port)) });
}

export const portName = (session: SessionModel, portId: string): string => session.nameOf(portId);

/** What following the line shows: where it comes from and where it leads, never the side itself. */
export function traceSentence(session: SessionModel, portId: string): string {
  const trace = tracePort(session.layout, portId);
  const end = (steps: readonly { readonly id: string }[]): string => plainName(steps[steps.length - 1].id);
  return word('panels.port.traced', { from: end(trace.upstream), to: end(trace.downstream) });
}

export function hoseName(hoseId: string): string {
  if (hoseId === 'charging') return word('panels.hose.charging');
  if (hoseId === 'gauge-low') return word('panels.hose.gaugeLow');
  return hoseId === 'gauge-high' ? word('panels.hose.gaugeHigh') : word('panels.hose.utility');
}

export function zonesInWords(session: SessionModel, zones: readonly string[]): string {
  return zones.map((zone) => session.nameOf(zone)).join(word('panels.zone.join'));
}

export function routeName(session: SessionModel, route: HoseRoute): string {
  return word('panels.hose.routeThrough', { zones: zonesInWords(session, route.through) });
}
