/** Places of the loop that are seen with a part, line or port: itself, its joints (`LINE-PART`), ports that stand on it. */
import type { Layout } from './layout';
import { loopLines } from './trace';

export function placesAt(layout: Layout, id: string): readonly string[] {
  const joints = loopLines(layout).flatMap(({ id: line, from, to }) =>
    [from, to].filter((part) => line === id || part === id).map((part) => `${line}-${part}`),
  );
  const ports = layout.ports.filter(({ on }) => ('line' in on ? on.line : on.part) === id);
  return [id, ...joints, ...ports.map((port) => port.id)];
}
