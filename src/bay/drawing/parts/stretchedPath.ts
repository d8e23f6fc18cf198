/**
 * A path with its numbers scaled across and down. It is written with absolute commands and upright arcs only, as the
 * build writes them; strokes keep their width, because nothing is scaled but the path.
 */
import { mm } from '../record';

const COMMAND = /([MLHVQCAZ])([^A-Z]*)/g;

export function stretchedPath(d: string, kx: number, ky: number): string {
  if (kx === 1 && ky === 1) return d;
  return d.replace(COMMAND, (_, command: string, rest: string) => {
    if (rest === '') return command;
    const scaled = rest.split(' ').map((text, i) => {
      const value = Number(text);
      if (command === 'H') return mm(value * kx);
      if (command === 'V') return mm(value * ky);
      // an arc: two radii, its turn and two flags, its end
      if (command === 'A' && i > 1) return i < 5 ? value : mm(value * (i === 5 ? kx : ky));
      return mm(value * (i % 2 === 0 ? kx : ky));
    });
    return command + scaled.join(' ');
  });
}
