/** How ports, hoses, routes and zones are called in words. A port is told by its bore and the thing it stands on, never by its side. */
import type { HoseRoute, Port } from '../layout/layout';
import { portOf, tracePort } from '../layout/trace';
import type { Mode } from '../session/corePort';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

export const placeOf = (port: Port): string => ('line' in port.on ? port.on.line : port.on.part);

/** In an assessed session a port has no line's name: its bore is all that is told. */
export function portWords(port: Port, mode: Mode, nameOf: (id: string) => string): string {
  const bore = String(port.boreMm);
  if (mode === 'assessed') return word('panels.port.title', { bore });
  return word('panels.port.name', { bore, place: nameOf(placeOf(port)) });
}

export const portName = (session: SessionModel, portId: string): string =>
  portWords(portOf(session.layout, portId), session.mode, session.nameOf);

/** What following the line shows: where it comes from and where it leads, never the side itself. */
export function traceSentence(session: SessionModel, portId: string): string {
  const trace = tracePort(session.layout, portId);
  const end = (steps: readonly { readonly id: string }[]): string =>
    session.nameOf(steps[steps.length - 1].id);
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
