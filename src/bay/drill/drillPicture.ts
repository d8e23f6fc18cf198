/** The drill's picture by the bay's own drawings: everything at rest, caps on, panels where they lie; marks on a layer above. */
import { nearestStation } from '../../layout/course';
import type { Layout, PointMm } from '../../layout/layout';
import type { PortFrame } from '../bayFrame';
import { badge, letter } from '../drawing/badge';
import { port } from '../drawing/gear/cap';
import { overBeam } from '../drawing/overBeam';
import { lampStrength } from '../drawing/palette';
import { clutchHub } from '../drawing/parts/clutchHub';
import { fanStill } from '../drawing/parts/fan';
import { stillPart } from '../drawing/parts/stillPart';
import { circle, roundRect } from '../drawing/paths';
import { bayPicture } from '../drawing/picture';
import { pipe } from '../drawing/pipe';
import { type Drawing, ROUND, ROUND_JOIN, shape, stroke } from '../drawing/record';
import { HOSE_FACTOR, hasHose, pathOf, type Run, runsOf } from '../drawing/run';

export function drillPicture(
  layout: Layout,
  ports: Readonly<Record<string, PortFrame>>,
  covered: ReadonlySet<string>,
  dark: boolean,
): Drawing {
  const { below, fans, above } = bayPicture(layout, ['', ''], lampStrength(dark));
  const hubs = layout.parts.filter(({ kind }) => HUBS.has(kind)).flatMap((part) => clutchHub(part, false));
  const caps = layout.ports
    .filter(({ id }) => !covered.has(id))
    .flatMap((one) => port(one.boreMm, one.at, ports[one.id] ?? { cap: 'blank', strap: false }));
  return [...below, ...fans.flatMap(fanStill), ...above, ...hubs, ...caps];
}

/** What wears a clutch's hub. */
const HUBS: ReadonlySet<string> = new Set(['clutch-front', 'compressor-side']);

export interface DrillMarks {
  readonly traced: readonly string[];
  readonly low: readonly string[];
  readonly high: readonly string[];
  readonly letters: Readonly<Record<string, string>>;
  /** Sides that are told, by port; before the answer none is. */
  readonly sides: Readonly<Record<string, 'low' | 'high'>>;
}

const LETTER_R_MM = 24;
const LETTER_AWAY_MM = 58;

/** What lies over the picture: the trace, the answer, the letters of the ports. */
export function drillMarks(
  layout: Layout,
  ports: Readonly<Record<string, PortFrame>>,
  covered: ReadonlySet<string>,
  marks: DrillMarks,
): Drawing {
  const runs = runsOf(layout);
  const ofIds = (ids: readonly string[]): Run[] => runs.filter((run) => ids.includes(run.line.id));
  const caps = layout.ports.filter(({ id }) => !covered.has(id));
  return [
    ...ofIds(marks.traced).flatMap((run) => haloed(run, layout)),
    ...layout.parts
      .filter(({ id, hit }) => hit && marks.traced.includes(id))
      .flatMap(({ hit }) => (hit ? box(...hit) : [])),
    ...ofIds(marks.low).flatMap((run) => told(run, 'low')),
    ...ofIds(marks.high).flatMap((run) => told(run, 'high')),
    ...caps.flatMap((one) => port(one.boreMm, one.at, ports[one.id] ?? { cap: 'blank', strap: false })),
    ...layout.ports.flatMap(({ id, at }) => nameplate(at, marks.letters[id] ?? '', marks.sides[id])),
  ];
}

/** A halo of ink and amber under the line, which is drawn again over it, with what sits at its ends. */
function haloed(run: Run, layout: Layout): Drawing {
  const wide = run.width * (hasHose(run.line) && run.loop ? HOSE_FACTOR : 1);
  const ends = layout.parts.filter(({ id }) => id === run.line.from || id === run.line.to);
  const joints = ends.filter(({ at, kind }) => JOINTS.has(kind) && nearestStation(run.course, at).awayMm < 4);
  return [
    stroke(pathOf(run), 'select', wide + 18, 1, ROUND),
    stroke(pathOf(run), 'ink', wide + 9, 1, ROUND),
    ...pipe({ ...run, over: [] }),
    ...joints.flatMap(stillPart),
    ...(run.line.overBeam ? overBeam(run, layout.shell) : []),
  ];
}

const JOINTS: ReadonlySet<string> = new Set([
  'block',
  'union',
  'muffler',
  'line-filter',
  'sight-block',
  'switch-block',
  'orifice',
]);

const box = (x: number, y: number, w: number, h: number): Drawing =>
  [
    ['ink', 8],
    ['select', 4.5],
  ].map(([ink, width]) =>
    stroke(roundRect(x - 6, y - 6, w + 12, h + 12, 14), ink as string, width as number),
  );

/** Low is a whole stroke, high a broken one: never colour alone. */
const told = (run: Run, side: 'low' | 'high'): Drawing => [
  stroke(pathOf(run), 'white', 15, 0.92, ROUND_JOIN),
  stroke(pathOf(run), side, 8, 1, side === 'low' ? ROUND_JOIN : { ...ROUND_JOIN, dash: [17, 9] }),
];

function nameplate([x, y]: PointMm, name: string, side: 'low' | 'high' | undefined): Drawing {
  const [lx, ly] = [x + LETTER_AWAY_MM, y - LETTER_AWAY_MM * 0.6];
  const leader = `M${x + 16} ${y - 10}L${lx} ${ly}`;
  return [
    stroke(leader, 'white', 9, 1, ROUND),
    stroke(leader, 'ink', 4, 1, ROUND),
    shape(circle(lx, ly, LETTER_R_MM), 'ink', 'white', 4),
    ...letter(name, lx, ly, LETTER_R_MM * 1.15, 'card'),
    ...(side ? badge(side, x, y, 22) : []),
  ];
}
