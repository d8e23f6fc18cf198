/**
 * The whole bay as still drawings with the fans' blades between them: what lies below the blades, and what lies above.
 * Both are painted once per size and theme; everything else that moves lies on top and is the scene's.
 */
import type { Layout, Part } from '../../layout/layout';
import { mat } from './gear/mat';
import { overBeam } from './overBeam';
import { lamp, VIGNETTE } from './paints';
import { fanMotor } from './parts/fan';
import { isFan } from './parts/isFan';
import { stillPart } from './parts/stillPart';
import { underHoodLabel } from './parts/underHoodLabel';
import { polygon } from './paths';
import { pipe } from './pipe';
import { type Drawing, fill } from './record';
import { type Run, runsOf } from './run';
import { beam } from './shell/beam';
import { body, PAST } from './shell/body';
import { cowl } from './shell/cowl';
import { floor } from './shell/floor';
import { front } from './shell/front';
import { hoodHolder } from './shell/hoodHolder';
import { slab } from './solids';

export interface BayPicture {
  readonly below: Drawing;
  /** Their blades turn between their shrouds and their motors. */
  readonly fans: readonly Part[];
  readonly above: Drawing;
}

interface Item {
  readonly z: number;
  readonly drawing: Drawing;
}

const Z_BEAM = 16;
const Z_OVER_BEAM = 16.4;
/** The blades of every fan lie over all shrouds, every motor over all blades: one cut in the stack serves them all. */
const MOTOR_OVER = 0.01;

export function bayPicture(
  layout: Layout,
  label: readonly [string, string],
  lampStrength: number,
): BayPicture {
  const runs = runsOf(layout);
  const items: Item[] = [
    { z: 0, drawing: floor(layout.shell) },
    ...layout.parts.flatMap(partItems),
    ...runs.flatMap((run) => lineItems(layout, run)),
    ...layout.ports.filter((port) => port.stub).map((port): Item => ({ z: 12.9, drawing: stub(port.at) })),
    { z: Z_BEAM, drawing: beam(layout.shell) },
  ].sort((a, b) => a.z - b.z);
  const fans = layout.parts.filter(isFan);
  const cut = Math.max(0, ...fans.map((fan) => fan.z));
  const printed = layout.parts
    .filter((part) => part.kind === 'label')
    .flatMap((part) => underHoodLabel(part, label));
  const shell: Drawing = [
    ...body(layout.shell),
    ...cowl(layout.shell),
    ...hoodHolder(layout.shell),
    ...front(layout),
    ...printed,
  ];
  return {
    below: [fill(everything(layout), 'page'), ...drawn(items.filter((item) => item.z <= cut))],
    fans,
    above: [
      ...drawn(items.filter((item) => item.z > cut)),
      ...shell,
      ...mat(layout.mat.rect),
      ...light(layout, lampStrength),
    ],
  };
}

const drawn = (items: readonly Item[]): Drawing => items.flatMap((item) => item.drawing);

function partItems(part: Part): Item[] {
  if (part.kind === 'label') return [];
  const still: Item = { z: part.z, drawing: stillPart(part) };
  return part.kind === 'fan-electric'
    ? [still, { z: part.z + MOTOR_OVER, drawing: fanMotor(part) }]
    : [still];
}

const lineItems = (layout: Layout, run: Run): Item[] => [
  { z: run.line.z, drawing: pipe(run) },
  ...(run.line.overBeam ? [{ z: Z_OVER_BEAM, drawing: overBeam(run, layout.shell) }] : []),
];

const stub = ([x, y]: readonly [number, number]): Drawing =>
  slab(x - 17, y - 17, 34, 34, { r: 7, lip: 8, m: 'mill', elevation: 14 });

const light = (layout: Layout, strength: number): Drawing => [
  fill(everything(layout), lamp(strength)),
  fill(everything(layout), VIGNETTE),
];

function everything(layout: Layout): string {
  const [x, y, w, h] = layout.view;
  return polygon([
    [x - PAST, y - PAST],
    [x + w + PAST, y - PAST],
    [x + w + PAST, y + h + PAST],
    [x - PAST, y + h + PAST],
  ]);
}
