/** What looking closer and following a pipe tell: facts only, no side named unless the pipe's end names it. */
import { layoutOf } from '../layout/layouts';
import { placeOf } from '../layout/place';
import { portOf, type TraceStep, tracePort } from '../layout/trace';
import type { SessionCore } from '../session/corePort';
import { word } from '../words/words';
import { nameOf } from './nameOf';
import { sensesOf } from './senses';

export function tracedLines(vehicleId: string, portId: string): string[] {
  const { downstream, upstream } = tracePort(layoutOf(vehicleId), portId);
  const way = (steps: readonly TraceStep[]): string => steps.map(({ id }) => nameOf(id)).join(', ');
  return [
    word('twin.closer.withFlow', { port: portId, way: way(downstream) }),
    word('twin.closer.againstFlow', { port: portId, way: way(upstream) }),
  ];
}

export function lookedLines(core: SessionCore, part: string): string[] {
  const senses = sensesOf(core);
  const turning = part === 'clutch' || part === 'compressor' ? 'clutch.turning' : `fan.${part}.turning`;
  if (!senses.has(turning)) return [word('twin.closer.nothing', { part: nameOf(part) })];
  const values = { part: nameOf(part) };
  return [senses.isOn(turning) ? word('twin.closer.turns', values) : word('twin.closer.stands', values)];
}

/** Each port as it looks: how wide, and where it lies. */
export function portLines(vehicleId: string): string[] {
  const layout = layoutOf(vehicleId);
  return layout.ports.map(({ id }) => {
    const { boreMm, at } = portOf(layout, id);
    const { depth, across } = placeOf(layout, at);
    return word('twin.closer.port', {
      port: id,
      bore: String(boreMm),
      depth: word(`twin.closer.${depth}`),
      across: word(`twin.closer.${across}`),
    });
  });
}
