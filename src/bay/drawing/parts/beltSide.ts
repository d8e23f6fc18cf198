/** Belt drive seen edge-on: every pulley a wheel on its own shaft, the belt one ribbed ribbon between bright flanges. */
import type { Part } from '../../../layout/layout';
import { across, down } from '../paints';
import { roundRect } from '../paths';
import { bar, type Drawing, fill, repeat, shape } from '../record';
import { slab } from '../solids';

const WIDTH = 30;

/** Well, shafts, belt and wheels. A wheel is [distance down from the part's y, diameter]. */
export function beltSide(part: Part): Drawing {
  const [x, y] = part.at;
  const wheels = part.wheels ?? [];
  const left = x + 8;
  const top = y + Math.min(...wheels.map(([dy, size]) => dy - size / 2));
  const bottom = y + Math.max(...wheels.map(([dy, size]) => dy + size / 2));
  return [
    fill(roundRect(left - 16, top - 16, WIDTH + 40, bottom - top + 36, 14), 'shadow', 0.42),
    ...wheels.flatMap(([dy, size]) =>
      slab(x + 40, y + dy - size * 0.2, 40, size * 0.4, {
        r: 6,
        lip: 5,
        m: 'cast',
        top: down('cast'),
        elevation: 10,
      }),
    ),
    shape(roundRect(left + 3, top + 4, WIDTH - 6, bottom - top - 4, 4), across('rub'), 'rub-d', 2),
    ...repeat(3, (i) => bar(left + 8 + i * 7, top + 8, left + 8 + i * 7, bottom - 4, 'rub-h', 1.5, 0.75)),
    ...wheels.flatMap(([dy, size]) => wheel(left, y + dy, size)),
  ];
}

function wheel(left: number, y: number, size: number): Drawing {
  const top = y - size / 2;
  const flange = { r: 3, lip: 3, m: 'mill', top: down('mill') } as const;
  return [
    ...slab(left - 7, top, 7, size, { ...flange, elevation: 14 }),
    ...slab(left + WIDTH, top, 7, size, { ...flange, elevation: 8 }),
    shape(roundRect(left, top + 2, WIDTH, size - 2, 2), down('rub'), 'rub-d', 1.6),
    ...repeat(3, (i) =>
      bar(left + 8 + i * 7, top + size * 0.14, left + 8 + i * 7, top + size * 0.46, 'rub-h', 1.6, 0.95),
    ),
    ...slab(left - 22, y - 11, 15, 22, { r: 4, lip: 2, m: 'mill', top: down('mill'), elevation: 6 }),
  ];
}

/** Where the ribbon shows between wheels: [x, from, to]; ticks run along it while the engine turns. */
export function beltSpans(part: Part): readonly (readonly [number, number, number])[] {
  const [x, y] = part.at;
  const wheels = [...(part.wheels ?? [])].sort((a, b) => a[0] - b[0]);
  return wheels
    .slice(1)
    .map(([dy, size], i) => [
      x + 8 + WIDTH / 2,
      y + wheels[i][0] + wheels[i][1] / 2 + 4,
      y + dy - size / 2 - 4,
    ]);
}
