/**
 * The box of a path, for gradients that span their shape. Curves count with points on them (an eighth apart), arcs
 * likewise; within a tenth of a millimetre at the sizes drawn here.
 */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

const TOKEN = /([a-zA-Z])|(-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?)/g;
const NEEDS: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, q: 4, c: 6, a: 7, z: 0 };
const SAMPLES = 8;

const known = new Map<string, Box>();

export function pathBox(d: string): Box {
  const found = known.get(d);
  if (found) return found;
  const box = measure(d);
  if (known.size > 20_000) known.clear();
  known.set(d, box);
  return box;
}

interface Pen {
  x: number;
  y: number;
  startX: number;
  startY: number;
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

function measure(d: string): Box {
  const pen: Pen = {
    x: 0,
    y: 0,
    startX: 0,
    startY: 0,
    minX: Infinity,
    minY: Infinity,
    maxX: -Infinity,
    maxY: -Infinity,
  };
  let command = 'M';
  let numbers: number[] = [];
  const flush = (): void => {
    const need = NEEDS[command.toLowerCase()];
    if (need === 0) draw(pen, command, []);
    else
      for (let i = 0; i + need <= numbers.length; i += need)
        draw(pen, i > 0 && command === 'M' ? 'L' : command, numbers.slice(i, i + need));
    numbers = [];
  };
  let first = true;
  for (const [, letter, number] of d.matchAll(TOKEN)) {
    if (letter === undefined) numbers.push(Number(number));
    else {
      if (!first) flush();
      first = false;
      command = letter;
    }
  }
  flush();
  return { x: pen.minX, y: pen.minY, w: pen.maxX - pen.minX, h: pen.maxY - pen.minY };
}

function reach(pen: Pen, x: number, y: number): void {
  pen.minX = Math.min(pen.minX, x);
  pen.maxX = Math.max(pen.maxX, x);
  pen.minY = Math.min(pen.minY, y);
  pen.maxY = Math.max(pen.maxY, y);
}

function goTo(pen: Pen, x: number, y: number): void {
  pen.x = x;
  pen.y = y;
  reach(pen, x, y);
}

function draw(pen: Pen, command: string, n: readonly number[]): void {
  const relative = command >= 'a';
  const [ox, oy] = relative ? [pen.x, pen.y] : [0, 0];
  switch (command.toLowerCase()) {
    case 'm':
      goTo(pen, ox + n[0], oy + n[1]);
      pen.startX = pen.x;
      pen.startY = pen.y;
      return;
    case 'l':
      goTo(pen, ox + n[0], oy + n[1]);
      return;
    case 'h':
      goTo(pen, ox + n[0], pen.y);
      return;
    case 'v':
      goTo(pen, pen.x, oy + n[0]);
      return;
    case 'q':
      curve(pen, [ox + n[0], oy + n[1]], [ox + n[0], oy + n[1]], [ox + n[2], oy + n[3]], true);
      return;
    case 'c':
      curve(pen, [ox + n[0], oy + n[1]], [ox + n[2], oy + n[3]], [ox + n[4], oy + n[5]], false);
      return;
    case 'a':
      arc(pen, n[0], n[1], n[3] === 1, n[4] === 1, ox + n[5], oy + n[6]);
      return;
    default:
      pen.x = pen.startX;
      pen.y = pen.startY;
  }
}

type XY = readonly [number, number];

function curve(pen: Pen, b: XY, c: XY, end: XY, quadratic: boolean): void {
  const start: XY = [pen.x, pen.y];
  for (let i = 1; i <= SAMPLES; i++) {
    const t = i / SAMPLES;
    const u = 1 - t;
    const at = (k: 0 | 1): number =>
      quadratic
        ? u * u * start[k] + 2 * u * t * b[k] + t * t * end[k]
        : u * u * u * start[k] + 3 * u * u * t * b[k] + 3 * u * t * t * c[k] + t * t * t * end[k];
    goTo(pen, at(0), at(1));
  }
}

/** An arc of an upright ellipse (none here is rotated), by its centre as SVG defines it. */
function arc(pen: Pen, rx0: number, ry0: number, large: boolean, sweep: boolean, x: number, y: number): void {
  const dx = (pen.x - x) / 2;
  const dy = (pen.y - y) / 2;
  const grow = Math.sqrt(Math.max(1, (dx * dx) / (rx0 * rx0 || 1) + (dy * dy) / (ry0 * ry0 || 1)));
  const rx = (rx0 || 1) * grow;
  const ry = (ry0 || 1) * grow;
  const ratio = (dx * dx) / (rx * rx) + (dy * dy) / (ry * ry) || 1;
  const root = Math.sqrt(Math.max(0, 1 / ratio - 1)) * (large === sweep ? -1 : 1);
  const cx = (pen.x + x) / 2 + (root * rx * dy) / ry;
  const cy = (pen.y + y) / 2 - (root * ry * dx) / rx;
  const from = Math.atan2((pen.y - cy) / ry, (pen.x - cx) / rx);
  let span = Math.atan2((y - cy) / ry, (x - cx) / rx) - from;
  if (sweep && span < 0) span += 2 * Math.PI;
  if (!sweep && span > 0) span -= 2 * Math.PI;
  for (let i = 1; i < 2 * SAMPLES; i++) {
    const angle = from + (span * i) / (2 * SAMPLES);
    reach(pen, cx + rx * Math.cos(angle), cy + ry * Math.sin(angle));
  }
  goTo(pen, x, y);
}
