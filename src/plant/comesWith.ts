/** Whether a new `part` renews `place`: itself, the seals of its own joints, the core of a port that stands on it. */
import type { Layout } from '../layout/layout';

export function comesWith({ lines, ports }: Layout, part: string, place: string): boolean {
  if (part === place) return true;
  const port = ports.find(({ id }) => id === place);
  if (port) return ('line' in port.on ? port.on.line : port.on.part) === part;
  return lines.some(
    ({ id, from, to }) =>
      (place === `${id}-${from}` || place === `${id}-${to}`) && (part === id || place === `${id}-${part}`),
  );
}
