/** How ports, hoses, routes and zones are called in words. A port is told by its bore and the thing it stands on, never by its side. */
import type { HoseRoute, Port } from '../layout/layout';
import { portOf, tracePort } from '../layout/trace';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

export const placeOf = (port: Port): string => ('line' in port.on ? port.on.line : port.on.part);

export function portName(session: SessionModel, portId: string): string {
  const port = portOf(session.layout, portId);
  if (session.mode === 'assessed') return word('panels.port.title', { bore: String(port.boreMm) });
  return word('panels.port.name', { bore: String(port.boreMm), place: session.nameOf(placeOf(port)) });
}

/** What following the line shows: where it comes from and where it leads, never the side itself. */
export function traceSentence(session: SessionModel, portId: string): string {
  const trace = tracePort(session.layout, portId);
  const end = (steps: readonly { readonly id: string }[]): string => session.nameOf(steps[steps.length - 1].id);
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
