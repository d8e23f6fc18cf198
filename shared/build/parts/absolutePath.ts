/**
 * A path with every command absolute, written out, in tenths of a millimetre: so that whoever fits a drawing to another
 * size can scale each number by what it stands for. Turned arcs and shorthand curves are refused; nobody needs them.
 */
import type { Refuse } from './partError.ts';

const NEEDS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, Q: 4, C: 6, A: 7, Z: 0 };
const PIECE = /\s*,?\s*(?:([a-zA-Z])|([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?))/gy;

interface Pen {
  x: number;
  y: number;
  startX: number;
  startY: number;
}

export function absolutePath(d: string, offset: number, refuse: Refuse): string {
  const pen: Pen = { x: 0, y: 0, startX: 0, startY: 0 };
  let out = '';
  for (const { command, numbers, at } of commandsOf(d, offset, refuse)) {
    const upper = command.toUpperCase();
    const needs = NEEDS[upper];
    if (needs === undefined) refuse(at, `path command "${command}" is not known here`);
    if (out === '' && upper !== 'M') refuse(at, 'a path begins with M');
    const count = needs as number;
    if (count === 0 ? numbers.length > 0 : numbers.length === 0 || numbers.length % count !== 0)
      refuse(at, `"${command}" takes ${count} numbers, or a multiple of that`);
    if (count === 0) out += draw(pen, 'Z', [], false);
    for (let i = 0; i < numbers.length; i += count) {
      const own = upper === 'M' && i > 0 ? 'L' : upper;
      if (own === 'A' && numbers[i + 2] !== 0) refuse(at, 'an arc that is turned');
      out += draw(pen, own, numbers.slice(i, i + count), command !== upper);
    }
  }
  return out;
}

interface Command {
  readonly command: string;
  readonly numbers: number[];
  readonly at: number;
}

function commandsOf(d: string, offset: number, refuse: Refuse): Command[] {
  const commands: Command[] = [];
  let end = 0;
  for (const found of d.matchAll(PIECE)) {
    end = found.index + found[0].length;
    const at = offset + end - (found[1] ?? found[2] ?? '').length;
    if (found[1] !== undefined) commands.push({ command: found[1], numbers: [], at });
    else if (commands.length === 0) refuse(at, 'a path begins with M');
    else commands.at(-1)?.numbers.push(Number(found[2]));
  }
  if (d.slice(end).trim() !== '') refuse(offset + end, 'not a path command or a number');
  return commands;
}

function draw(pen: Pen, command: string, n: readonly number[], relative: boolean): string {
  const [ox, oy] = relative ? [pen.x, pen.y] : [0, 0];
  if (command === 'Z') {
    pen.x = pen.startX;
    pen.y = pen.startY;
    return 'Z';
  }
  if (command === 'H') pen.x = ox + (n[0] as number);
  else if (command === 'V') pen.y = oy + (n[0] as number);
  else {
    pen.x = ox + (n.at(-2) as number);
    pen.y = oy + (n.at(-1) as number);
  }
  if (command === 'M') {
    pen.startX = pen.x;
    pen.startY = pen.y;
  }
  const moved = n.map((value, i) => {
    if (command === 'H') return value + ox;
    if (command === 'V') return value + oy;
    if (command === 'A') return i < 5 ? value : value + (i === 5 ? ox : oy);
    return value + (i % 2 === 0 ? ox : oy);
  });
  return command + moved.map(tenths).join(' ');
}

const tenths = (value: number): number => Math.round(value * 10) / 10;
