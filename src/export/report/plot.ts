/**
 * A plot of lines, points and printed bands over two axes, as SVG text. Lines differ by dash as well as by colour, bands
 * are hatched, so nothing hangs on colour alone.
 */
import { scaleLinear, scaleLog } from 'd3-scale';
import { line } from 'd3-shape';
import { safe } from './page';

export type Point = readonly [x: number, y: number];

export interface Plot {
  readonly title: string;
  readonly x: string;
  readonly y: string;
  readonly logX?: boolean;
  readonly lines: readonly { readonly name: string; readonly points: readonly Point[] }[];
  /** Printed ranges: x, from, to. Two or more make a band, one alone a bar. */
  readonly bands?: readonly {
    readonly name: string;
    readonly points: readonly (readonly [number, number, number])[];
  }[];
  readonly marks?: readonly { readonly name: string; readonly points: readonly Point[] }[];
  /** Limits to draw across, by y. */
  readonly limits?: readonly { readonly name: string; readonly y: number }[];
}

const WIDTH = 520;
const HEIGHT = 320;
const MARGIN = { left: 62, right: 24, top: 30, bottom: 74 } as const;
const DASHES = ['none', '7 4', '2 3', '9 3 2 3'] as const;
const LOG_TICKS = 3;
const COLOURS = ['#17375e', '#8a3b12', '#22642f', '#5b2a6e'] as const;
const TICKS = 6;

export function plot(spec: Plot): string {
  const points = allPoints(spec);
  const x = (spec.logX === true ? scaleLog() : scaleLinear())
    .domain(extent(points.map(([at]) => at)))
    .range([MARGIN.left, WIDTH - MARGIN.right])
    .nice();
  const y = scaleLinear(extent(points.map(([, at]) => at)), [HEIGHT - MARGIN.bottom, MARGIN.top]).nice();
  const path = line<Point>(
    ([at]) => x(at),
    ([, at]) => y(at),
  );
  const parts = [
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${safe(spec.title)}">`,
    text(WIDTH / 2, 18, spec.title, 'class="t" text-anchor="middle"'),
    ...x.ticks(spec.logX === true ? LOG_TICKS : TICKS).map((at) => tickX(x(at), at.toLocaleString('en'))),
    ...y.ticks(TICKS).map((at) => tickY(y(at), String(y.tickFormat(TICKS)(at)))),
    text(WIDTH / 2, HEIGHT - MARGIN.bottom + 32, spec.x, 'text-anchor="middle"'),
    `<text transform="translate(14 ${(HEIGHT - MARGIN.bottom + MARGIN.top) / 2}) rotate(-90)" text-anchor="middle">${safe(spec.y)}</text>`,
    ...(spec.bands ?? []).map(({ points: band }) => bandMarkup(band, x, y)),
    ...(spec.limits ?? []).map(
      ({ y: at }) => `<path class="limit" d="M${MARGIN.left} ${n(y(at))}H${WIDTH - MARGIN.right}"/>`,
    ),
    ...spec.lines.map(
      ({ points: run }, i) =>
        `<path class="l" d="${path(run) ?? ''}" stroke="${COLOURS[i % 4]}" stroke-dasharray="${DASHES[i % 4]}"/>`,
    ),
    ...(spec.marks ?? []).flatMap(({ points: some }, i) =>
      some.map(
        ([px, py]) => `<circle cx="${n(x(px))}" cy="${n(y(py))}" r="3.2" stroke="${COLOURS[i % 4]}"/>`,
      ),
    ),
    legend(spec),
    '</svg>',
  ];
  return parts.join('\n');
}

type Scale = (value: number) => number;

/** Two decimals of a pixel are enough, and the same on every run. */
const n = (value: number): string => value.toFixed(2);

const text = (x: number, y: number, words: string, more: string): string =>
  `<text x="${n(x)}" y="${n(y)}" ${more}>${safe(words)}</text>`;

const tickX = (at: number, words: string): string =>
  `<path class="grid" d="M${n(at)} ${MARGIN.top}V${HEIGHT - MARGIN.bottom}"/>${text(at, HEIGHT - MARGIN.bottom + 15, words, 'text-anchor="middle"')}`;

const tickY = (at: number, words: string): string =>
  `<path class="grid" d="M${MARGIN.left} ${n(at)}H${WIDTH - MARGIN.right}"/>${text(MARGIN.left - 6, at + 4, words, 'text-anchor="end"')}`;

function bandMarkup(band: readonly (readonly [number, number, number])[], x: Scale, y: Scale): string {
  if (band.length === 1) {
    const [at, from, to] = band[0];
    return `<path class="bar" d="M${n(x(at))} ${n(y(from))}V${n(y(to))}"/>`;
  }
  const up = band.map(([at, , to]) => `${n(x(at))} ${n(y(to))}`);
  const down = band.map(([at, from]) => `${n(x(at))} ${n(y(from))}`).reverse();
  return `<path class="band" d="M${[...up, ...down].join('L')}Z"/>`;
}

function legend({ lines, bands = [], marks = [], limits = [] }: Plot): string {
  const entries = [
    ...lines.map(({ name }, i) => [
      name,
      `<path class="l" d="M0 -4H26" stroke="${COLOURS[i % 4]}" stroke-dasharray="${DASHES[i % 4]}"/>`,
    ]),
    ...bands.map(({ name }) => [name, '<path class="band" d="M0 -9H26V1H0Z"/>']),
    ...marks.map(({ name }, i) => [name, `<circle cx="13" cy="-4" r="3.2" stroke="${COLOURS[i % 4]}"/>`]),
    ...limits
      .filter(({ name }, i) => limits.findIndex((limit) => limit.name === name) === i)
      .map(({ name }) => [name, '<path class="limit" d="M0 -4H26"/>']),
  ];
  const perRow = 3;
  return entries
    .map(([name, key], i) => {
      const x = MARGIN.left - 40 + (i % perRow) * 166;
      const y = HEIGHT - 24 + Math.floor(i / perRow) * 16;
      return `<g transform="translate(${x} ${y})">${key}<text x="32">${safe(name)}</text></g>`;
    })
    .join('');
}

function allPoints({ lines, bands = [], marks = [], limits = [] }: Plot): Point[] {
  const points: Point[] = [...lines, ...marks].flatMap((run) => run.points);
  for (const band of bands) for (const [x, from, to] of band.points) points.push([x, from], [x, to]);
  const first = points[0]?.[0] ?? 0;
  for (const { y } of limits) points.push([first, y]);
  return points;
}

function extent(values: readonly number[]): [number, number] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  return low === high ? [low - 1, high + 1] : [low, high];
}
