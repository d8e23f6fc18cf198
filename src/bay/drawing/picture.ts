/**
 * The whole bay as a stack of layers, lowest first. Still layers are painted once per size and theme; live slots are
 * filled by the scene. Neighbouring still things share a layer, so the stack is only cut where something moves.
 */
import type { Layout, Part } from '../../layout/layout';
import { mat } from './gear/mat';
import { overBeam } from './overBeam';
import { lamp, VIGNETTE } from './paints';
import { fanMotor } from './parts/fanElectric';
import { stillPart } from './parts/stillParts';
import { underHoodLabel } from './parts/underHoodLabel';
import { polygon } from './paths';
import { pipe } from './pipe';
import { type Drawing, fill } from './record';
import { type Run, runsOf } from './run';
import { beam } from './shell/beam';
import { body, PAST } from './shell/body';
import { cowl } from './shell/cowl';
import { floor } from './shell/floor';
import { hoodHolder } from './shell/hoodHolder';
import { nose } from './shell/nose';
import { slab } from './solids';

/** A layer is still, or the slot of a fan's blades, which turn between its shroud and its motor. */
export type Layer = { readonly still: Drawing } | { readonly fan: Part };

interface Item {
  readonly z: number;
  readonly drawing?: Drawing;
  readonly fan?: Part;
}

const Z_BEAM = 16;
const Z_OVER_BEAM = 16.4;
/** Blades of all fans lie over all their shrouds, motors over all blades: one cut in the stack serves them all. */
const BLADES_OVER = 0.01;
const MOTOR_OVER = 0.02;
/** From here up things lie on the shell. */
const Z_ON_SHELL = 20;

export function bayPicture(layout: Layout, label: readonly [string, string], lampStrength: number): Layer[] {
  const runs = runsOf(layout);
  const items: Item[] = [
    { z: 0, drawing: floor(layout.shell) },
    ...layout.parts.flatMap(partItems),
    ...runs.flatMap((run) => lineItems(layout, run)),
    ...layout.ports.filter((port) => port.stub).map((port): Item => ({ z: 12.9, drawing: stub(port.at) })),
    { z: Z_BEAM, drawing: beam(layout.shell) },
  ].sort((a, b) => a.z - b.z);
  const below = items.filter((item) => item.z < Z_ON_SHELL);
  const printed = layout.parts
    .filter((part) => part.kind === 'label')
    .flatMap((part) => underHoodLabel(part, label));
  const shell: Drawing = [
    ...body(layout.shell),
    ...cowl(layout.shell),
    ...hoodHolder(layout.shell),
    ...nose(layout.shell),
    ...printed,
  ];
  return stack([
    { z: -1, drawing: [fill(everything(layout), 'page')] },
    ...below,
    { z: 99, drawing: [...shell, ...mat(layout.mat.rect), ...light(layout, lampStrength)] },
  ]);
}

function partItems(part: Part): Item[] {
  if (part.kind === 'label') return [];
  const still: Item = { z: part.z, drawing: stillPart(part) };
  if (part.kind !== 'fan-electric') return [still];
  return [still, { z: part.z + BLADES_OVER, fan: part }, { z: part.z + MOTOR_OVER, drawing: fanMotor(part) }];
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

/** Joins neighbouring still items into layers. */
function stack(items: readonly Item[]): Layer[] {
  const layers: Layer[] = [];
  let still: Drawing[number][] = [];
  const flush = (): void => {
    if (still.length > 0) layers.push({ still });
    still = [];
  };
  for (const item of items) {
    if (item.drawing) still.push(...item.drawing);
    if (item.fan) {
      flush();
      layers.push({ fan: item.fan });
    }
  }
  flush();
  return layers;
}
