/**
 * Shape of shared/vehicles/ID.layout.yaml: where everything lies in a car's bay, in millimetres, and which drawing each
 * part wears. Unknown keys, drawings and sizes are errors. Whether what it names is there is `layoutFindings`' question.
 */
import { z } from 'zod';
import { nearest } from '../../src/words/nearest';
import { checkedData } from './problems.ts';
import { YamlError, type YamlPath, type YamlSource } from './readYaml.ts';

const id = z.string().regex(/^[a-z][a-z0-9-]*$/);
const mm = z.number();
const share = z.number().min(0).max(1);
const point = z.tuple([mm, mm]);
const rect = z.tuple([mm, mm, mm.positive(), mm.positive()]);
const way = z.array(z.union([point, z.tuple([mm, mm, mm.positive()])])).min(2);
const paints = ['ochre', 'pearl', 'mulberry', 'moss', 'fog', 'sage'] as const;
const bore = z.union([9.5, 11, 13, 14, 16, 17].map((width) => z.literal(width)));
const hoses = { low: mm, high: mm, charging: mm, utility: mm };

const shell = z.strictObject({
  left: mm,
  right: mm,
  firewall: mm,
  nose: mm,
  beam: mm,
  grille: mm,
  lower: mm,
  bumper: mm,
  round: mm.min(0),
  hold: z.enum(['rod', 'struts']),
});

const part = z.strictObject({
  id,
  kind: id,
  drawing: id.optional(),
  name: id.optional(),
  at: point,
  z: z.number(),
  size: z.record(z.string(), z.number()).optional(),
  wheels: z.array(z.array(mm).min(2).max(3)).min(2).optional(),
  hit: rect.optional(),
});

const line = z.strictObject({
  id,
  from: id.optional(),
  to: id.optional(),
  diameterMm: mm.positive(),
  z: z.number(),
  lift: mm.min(0),
  fillet: mm.positive(),
  overBeam: z.boolean().optional(),
  way,
  sections: z.array(z.tuple([z.enum(['tube', 'hose', 'rubber', 'iron', 'cable']), share, share])).optional(),
  clamps: z.array(share).optional(),
  nuts: z.array(share).optional(),
  bands: z.array(share).optional(),
  holds: z.array(id).optional(),
  skin: z.enum(['duct', 'loom']).optional(),
  ends: z.literal('round').optional(),
});

const port = z.strictObject({
  id,
  boreMm: bore,
  at: point,
  on: z.union([z.strictObject({ line: id }), z.strictObject({ part: id })]),
  stub: z.boolean().optional(),
  cover: z.strictObject({ rect }).optional(),
});

const layoutSchema = z.strictObject({
  id,
  view: rect,
  paint: z.enum(paints),
  body: z.enum(['hatch', 'sedan', 'pickup', 'van', 'compact', 'electric']),
  pipeScale: z.number().positive(),
  shell,
  parts: z.array(part).min(1),
  lines: z.array(line).min(1),
  ports: z.array(port).min(1),
  zones: z.array(
    z.strictObject({ id, hazard: z.enum(['fan', 'belt', 'heat']).optional(), part: id.optional(), rect }),
  ),
  routes: z.array(
    z.strictObject({ id, port: id, through: z.array(id).min(1), way: z.array(point).optional() }),
  ),
  mat: z.strictObject({
    side: z.enum(['left', 'right']),
    rect,
    canAt: point,
    rest: z.strictObject({ low: point, high: point, charging: point, utility: point }),
  }),
  edge: z.strictObject({ x: mm, ...hoses }),
});

type PartData = z.infer<typeof part>;

/** Sizes that any part may be given: how far it is turned, the diameter of the line it sits in. */
const ANY_SIZE: readonly string[] = ['turnDeg', 'd'];

/** `drawings`: the names there are, each with the sizes it may be asked for in. Throws `YamlError`. */
export function checkLayout(source: YamlSource, drawings: ReadonlyMap<string, readonly string[]>): unknown {
  const data = checkedData(source, layoutSchema) as z.infer<typeof layoutSchema>;
  data.parts.forEach((one, i) => {
    checkDrawing(source, one, ['parts', i], drawings);
  });
  return data;
}

function checkDrawing(
  source: YamlSource,
  { kind, drawing, size = {} }: PartData,
  path: YamlPath,
  drawings: ReadonlyMap<string, readonly string[]>,
): void {
  const name = drawing === undefined ? kind : `${kind}-${drawing}`;
  const sizes = drawings.get(name);
  if (!sizes) {
    const near = nearest(name, drawings.keys());
    const hint =
      near === undefined ? `there is ${[...drawings.keys()].join(', ')}` : `did you mean "${near}"?`;
    const at = source.at([...path, drawing === undefined ? 'kind' : 'drawing']);
    throw new YamlError(at, 'no-drawing', `no drawing "${name}"; ${hint}`);
  }
  for (const key of Object.keys(size)) {
    if (sizes.includes(key) || ANY_SIZE.includes(key)) continue;
    const known = [...sizes, ...ANY_SIZE].join(', ');
    throw new YamlError(
      source.atKey([...path, 'size', key]),
      'no-size',
      `drawing "${name}" has no size "${key}"; there is ${known}`,
    );
  }
}
