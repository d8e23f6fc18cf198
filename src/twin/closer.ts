/** What looking closer and following a pipe tell: facts only, no side named unless the pipe's end names it. */
import { boreOf } from '../layout/bores';
import type { Layout } from '../layout/layout';
import { layoutOf } from '../layout/layouts';
import { placeOf } from '../layout/place';
import { placesAt } from '../layout/placesAt';
import { portOf, type TraceStep, tracePort } from '../layout/trace';
import type { SessionCore } from '../session/corePort';
import { word } from '../words/words';
import { nameOf } from './nameOf';
import { type Senses, sensesOf } from './senses';

/** Share of its speed below which a fan is seen to turn slowly. */
const SLOW_BELOW = 0.8;
/** The part with a sight glass in its head, where the car has one. */
const GLASS_IN = 'drier';

export function tracedLines(vehicleId: string, portId: string): string[] {
  const { downstream, upstream } = tracePort(layoutOf(vehicleId), portId);
  const way = (steps: readonly TraceStep[]): string => steps.map(({ id }) => nameOf(id)).join(', ');
  return [
    word('twin.closer.withFlow', { port: portId, way: way(downstream) }),
    word('twin.closer.againstFlow', { port: portId, way: way(upstream) }),
  ];
}

export function lookedLines(vehicleId: string, core: SessionCore, part: string): string[] {
  const senses = sensesOf(core);
  const values = { part: nameOf(part) };
  const said: string[] = [];
  const turning = turningCue(part);
  if (senses.has(turning)) {
    const isSlow = senses.value(`fan.${part}.speedRatio`) < SLOW_BELOW;
    if (!senses.isOn(turning)) said.push(word('twin.closer.stands', values));
    else said.push(isSlow ? word('twin.closer.turnsSlowly', values) : word('twin.closer.turns', values));
  }
  const dirt = `dirt.${part}`;
  if (senses.has(dirt))
    said.push(senses.value(dirt) > 0 ? word('twin.closer.dirty', values) : word('twin.closer.clean', values));
  said.push(...stainLines(layoutOf(vehicleId), senses, part), ...glassLines(senses, part));
  return said.length > 0 ? said : [word('twin.closer.nothing', values)];
}

function stainLines(layout: Layout, senses: Senses, part: string): string[] {
  return placesAt(layout, part)
    .filter((place) => senses.value(`stain.${place}`) > 0)
    .map((place) => word('twin.closer.stain', { place: nameOf(place) }));
}

function glassLines(senses: Senses, part: string): string[] {
  if (part !== GLASS_IN || !senses.has('sightGlass.bubblesRatio')) return [];
  if (senses.isOn('sightGlass.streaked')) return [word('twin.closer.glassStreaked')];
  return [
    word(senses.value('sightGlass.bubblesRatio') > 0 ? 'twin.closer.glassBubbles' : 'twin.closer.glassClear'),
  ];
}

function turningCue(part: string): string {
  if (part === 'clutch' || part === 'compressor') return 'clutch.turning';
  return part === 'blower' ? 'blower.turning' : `fan.${part}.turning`;
}

/** Each port as it looks: how wide, and where it lies. */
export function portLines(vehicleId: string, core: SessionCore): string[] {
  const layout = layoutOf(vehicleId);
  return core.view().ports.map(({ id, diameterM }) => {
    const { depth, across } = placeOf(layout, portOf(layout, id).at);
    return word('twin.closer.port', {
      port: id,
      bore: String(boreOf(diameterM)),
      depth: word(`twin.closer.${depth}`),
      across: word(`twin.closer.${across}`),
    });
  });
}
