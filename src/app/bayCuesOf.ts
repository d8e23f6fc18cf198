/** What an eye has of the loop's state beside frost: oil, soap, dye, the sight glass, how fast things turn. Cues only. */
import type { BayFrame } from '../bay/bayFrame';
import { isFan } from '../bay/drawing/parts/isFan';
import type { Layout } from '../layout/layout';
import { loopLines } from '../layout/trace';
import type { SessionModel } from '../panels/sessionModel';

type Cues = Pick<BayFrame, 'glass' | 'stains' | 'soap' | 'glow' | 'fanSpeeds' | 'hubSpeed'>;

export function bayCuesOf(session: SessionModel): Cues {
  const { layout } = session;
  const or = (id: string, none: number): number => {
    const value = session.signal(id);
    return Number.isNaN(value) ? none : value;
  };
  return {
    glass: {
      bubbles: or('sightGlass.bubblesRatio', 0),
      streaked: session.signal('sightGlass.streaked') === 1,
    },
    stains: stainsOf(session),
    soap: soapOf(session),
    glow: glowOf(session),
    fanSpeeds: Object.fromEntries(
      layout.parts.filter(isFan).map(({ id }) => [id, or(`fan.${id}.speedRatio`, 1)]),
    ),
    hubSpeed: or('clutch.hubSpeedRatio', 1),
  };
}

/** Places of a bay that oil is seen at, with their channels, listed once: a frame is made for every picture. */
const listed = new WeakMap<Layout, readonly (readonly [id: string, channel: string])[]>();

function placesOf(layout: Layout) {
  const known = listed.get(layout);
  if (known) return known;
  const joints = loopLines(layout).flatMap(({ id, from, to }) => [`${id}-${from}`, `${id}-${to}`]);
  const places = [...[...layout.parts, ...layout.lines, ...layout.ports].map(({ id }) => id), ...joints];
  const channels = places.map((id) => [id, `stain.${id}`] as const);
  listed.set(layout, channels);
  return channels;
}

function stainsOf({ layout, signal }: SessionModel): Record<string, number> {
  const stains: Record<string, number> = {};
  for (const [id, channel] of placesOf(layout)) {
    const share = signal(channel);
    if (share > 0) stains[id] = share;
  }
  return stains;
}

/** Where it was put last; what it shows there is the reading's. */
function soapOf(session: SessionModel): BayFrame['soap'] {
  const at = session.placeOf('soap');
  const level = session.signal('soap.bubbles');
  return at === null ? null : { at, level: Number.isNaN(level) ? null : level };
}

function glowOf(session: SessionModel): BayFrame['glow'] {
  const at = session.placeOf('lamp');
  const level = session.signal('lamp.glow');
  return at === null || Number.isNaN(level) ? null : { at, level };
}
