/** What a thing of the bay joins: a port its line, a line its two ends and the ports on it, a part its lines. */
import type { DrillBay } from './drill';

export function joins({ layout }: DrillBay, id: string): string[] {
  const port = layout.ports.find((one) => one.id === id);
  if (port) return 'line' in port.on ? [port.on.line] : [port.on.part];
  const line = layout.lines.find((one) => one.id === id);
  if (line) {
    const ports = layout.ports.filter(({ on }) => 'line' in on && on.line === id).map((one) => one.id);
    return [line.from, ...ports, line.to].filter((one) => one !== undefined);
  }
  const onIt = layout.ports.filter(({ on }) => 'part' in on && on.part === id);
  return [...layout.lines.filter(({ from, to }) => from === id || to === id), ...onIt].map((one) => one.id);
}

/** The panel under which a thing lies: a port or part by its middle; null where it is in view. */
export function coverOver(bay: DrillBay, id: string, lifted: readonly string[]): string | null {
  const thing =
    bay.layout.ports.find((one) => one.id === id) ?? bay.layout.parts.find((one) => one.id === id);
  if (!thing) return null;
  const [x, y] = thing.at;
  const over = bay.covers.find(
    ({ id: cover, rect: [left, top, w, h] }) =>
      cover !== id && x >= left && y >= top && x <= left + w && y <= top + h && !lifted.includes(cover),
  );
  return over?.id ?? null;
}
