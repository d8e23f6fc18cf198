/** What is written in an ink list comes on the canvas as it was told, through any number of pictures and any amount of ink. */
import { expect, test } from 'vitest';
import type { Ink2D } from '../../../src/bay/drawing/painter';
import { createInkList, type InkList, OPERATIONS, TAKES } from '../../../src/bay/ink/inkList';
import type { Inks } from '../../../src/bay/ink/inks';
import { replay } from '../../../src/bay/ink/replay';
import { Way } from '../../../src/bay/ink/way';

/** A canvas that writes down every call and everything it is set to. */
function listening() {
  const told: string[] = [];
  const ink = new Proxy({} as Record<string, unknown>, {
    get:
      (_, name) =>
      (...args: unknown[]) =>
        told.push([name, ...args].join(' ')),
    set(_, name, value) {
      told.push(`${String(name)} = ${value}`);
      return true;
    },
  });
  return { told, ink: ink as unknown as Ink2D };
}

const PICTURE = 'picture' as unknown as CanvasImageSource;

function replayed(list: InkList, colours: string[]): string[] {
  const { told, ink } = listening();
  const { numbers, length, newColours } = list.taken();
  colours.push(...newColours);
  replay(ink, numbers, length, colours, new Map([[7, PICTURE]]));
  list.giveBack(numbers);
  return told;
}

test('each operation comes out as the canvas has it', () => {
  const list = createInkList();
  const told: [keyof Inks, readonly string[]][] = [
    ['at', ['setTransform 1 0 0 2 3 4']],
    ['alpha', ['globalAlpha = 0.5']],
    ['colour', ['strokeStyle = #102030', 'fillStyle = #102030']],
    ['line', ['lineWidth = 3', 'lineCap = round', 'lineJoin = bevel']],
    ['begin', ['beginPath']],
    ['moveTo', ['moveTo 1 2']],
    ['lineTo', ['lineTo 3 4']],
    ['quadraticTo', ['quadraticCurveTo 1 2 3 4']],
    ['closed', ['closePath']],
    ['circle', ['moveTo 6 2', `arc 1 2 5 0 ${2 * Math.PI}`]],
    ['roundRect', ['roundRect 1 2 3 4 0.5']],
    ['fill', ['fill']],
    ['stroke', ['stroke']],
    ['stamp', ['drawImage picture 1 2 3 4']],
  ];
  list.at(1, 0, 0, 2, 3, 4);
  list.alpha(0.5);
  list.colour('#102030');
  list.line(3, 'round', 'bevel');
  list.begin();
  list.moveTo(1, 2);
  list.lineTo(3, 4);
  list.quadraticTo(1, 2, 3, 4);
  list.closed();
  list.circle(1, 2, 5);
  list.roundRect(1, 2, 3, 4, 0.5);
  list.fill();
  list.stroke();
  list.stamp(7, 1, 2, 3, 4);
  list.stamp(8, 1, 2, 3, 4);
  expect(told.map(([name]) => name)).toEqual(OPERATIONS);
  const lines = replayed(list, []).map((line) => line.trim());
  expect(lines).toEqual(told.flatMap(([, calls]) => calls));
});

test('a colour is sent once and known afterwards', () => {
  const [list, colours] = [createInkList(), [] as string[]];
  list.colour('#111111');
  replayed(list, colours);
  list.colour('#222222');
  list.colour('#111111');
  expect(replayed(list, colours).filter((line) => line.startsWith('fillStyle'))).toEqual([
    'fillStyle = #222222',
    'fillStyle = #111111',
  ]);
  expect(colours).toEqual(['#111111', '#222222']);
});

test('a long picture finds room, and room that was given back is used again', () => {
  const list = createInkList();
  const way = new Way();
  for (let i = 0; i < 5000; i++) way.lineTo(i, -i);
  way.trace(list);
  const first = list.taken();
  expect(first.length).toBe(5000 * (1 + TAKES.lineTo));
  list.giveBack(first.numbers);
  list.taken();
  way.trace(list);
  const again = list.taken();
  expect(again.numbers).toBe(first.numbers);
  expect(again.length).toBe(first.length);
  const { told, ink } = listening();
  replay(ink, again.numbers, again.length, [], new Map());
  expect(told[4999]).toBe('lineTo 4999 -4999');
});
