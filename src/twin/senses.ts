/** One moment of a session as a person has it: readings, cues and controls by id. Truth is not in here. */
import type { SessionCore } from '../session/corePort';

export interface Senses {
  has(id: string): boolean;
  /** NaN where there is nothing to read, or no such thing here. */
  value(id: string): number;
  isOn(id: string): boolean;
  /** Middle parts of all `kind.<id>.last`, in channel order. */
  idsOf(kind: string, last: string): readonly string[];
  /** Last parts of all `kind.<id>`: surfaces that can be frosted or wet. */
  surfaceIds(kind: string): readonly string[];
}

export function sensesOf(core: SessionCore): Senses {
  const frame = new Float64Array(core.channels.length);
  core.writeFrame(frame);
  const perceptible = core.channels.map(({ id, kind }, index) => ({ id, kind, value: frame[index] }));
  const byId = new Map(
    perceptible.filter(({ kind }) => kind !== 'truth').map(({ id, value }) => [id, value]),
  );
  return {
    has: (id) => byId.has(id),
    value: (id) => byId.get(id) ?? Number.NaN,
    isOn: (id) => byId.get(id) === 1,
    idsOf: (kind, last) =>
      [...byId.keys()]
        .map((id) => id.split('.'))
        .filter((part) => part.length === 3 && part[0] === kind && part[2] === last)
        .map((part) => part[1]),
    surfaceIds: (kind) =>
      [...byId.keys()]
        .map((id) => id.split('.'))
        .filter((part) => part.length === 2 && part[0] === kind)
        .map((part) => part[1]),
  };
}
