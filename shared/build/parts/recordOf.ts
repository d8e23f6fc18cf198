/** One drawn element of a part file as a draw record: path, rect, circle, ellipse, line, text. */
import { type Matrix, multiply } from '../../../src/bay/drawing/matrix';
import { ellipse, roundRect } from '../../../src/bay/drawing/paths';
import type { DrawRecord, StrokeStyle } from '../../../src/bay/drawing/record';
import { absolutePath } from './absolutePath.ts';
import { attributesOf, type Taken } from './attributes.ts';
import type { Paints } from './paintOf.ts';
import type { Refuse } from './partError.ts';
import type { XmlElement } from './readXml.ts';
import { transformOf } from './transform.ts';

const WEIGHT = 700;
type Outline = (taken: Taken, refuse: Refuse) => string;

const OUTLINES: Readonly<Record<string, Outline>> = {
  path: (taken, refuse) => taken.text('d') ?? refuse(taken.offset, '<path> needs "d"'),
  rect: (taken) =>
    roundRect(
      taken.needed('x'),
      taken.needed('y'),
      taken.needed('width'),
      taken.needed('height'),
      taken.number('rx') ?? 0,
    ),
  circle(taken) {
    const r = taken.needed('r');
    return ellipse(taken.needed('cx'), taken.needed('cy'), r, r);
  },
  ellipse: (taken) => ellipse(taken.needed('cx'), taken.needed('cy'), taken.needed('rx'), taken.needed('ry')),
  line: (taken) => `M${taken.needed('x1')} ${taken.needed('y1')}L${taken.needed('x2')} ${taken.needed('y2')}`,
};

export const isDrawn = (name: string): boolean => name === 'text' || name in OUTLINES;

/** `outer` is the transform of the groups it stands in. */
export function recordOf(
  element: XmlElement,
  outer: Matrix | undefined,
  paints: Paints,
  refuse: Refuse,
): DrawRecord {
  const taken = attributesOf(element, refuse);
  const transform = taken.text('transform');
  const own = transform === undefined ? undefined : transformOf(transform, taken.at('transform'), refuse);
  const matrix = outer && own ? multiply(outer, own) : (outer ?? own);
  const placed = matrix ? { matrix } : {};
  if (element.name === 'text') return { ...textOf(element, taken, paints), ...placed };
  if (element.children.length > 0 || element.text.trim() !== '')
    refuse(element.offset, `<${element.name}> holds nothing inside`);
  const outline = (OUTLINES[element.name] as Outline)(taken, refuse);
  const d = absolutePath(outline, taken.at('d'), refuse);
  const drawn = { d, ...fillOf(taken, paints), ...strokeOf(taken, paints), ...placed };
  taken.done();
  if (!('fill' in drawn) && !('ink' in drawn)) refuse(element.offset, `<${element.name}> shows nothing`);
  return drawn;
}

function fillOf(taken: Taken, paints: Paints): Partial<DrawRecord> {
  const fill = taken.text('fill') ?? 'none';
  if (fill === 'none') return {};
  const alpha = taken.share('fill-opacity');
  const isEvenOdd = taken.oneOf('fill-rule', ['evenodd', 'nonzero']) === 'evenodd';
  return {
    fill: paints.paint(fill, taken.at('fill')),
    ...(alpha < 1 ? { fillAlpha: alpha } : {}),
    ...(isEvenOdd ? { evenOdd: true } : {}),
  };
}

function strokeOf(taken: Taken, paints: Paints): Partial<DrawRecord> {
  const ink = taken.text('stroke');
  if (ink === undefined) return {};
  const alpha = taken.share('stroke-opacity');
  const cap = taken.oneOf('stroke-linecap', ['round', 'butt']);
  const join = taken.oneOf('stroke-linejoin', ['round', 'miter']);
  const style: StrokeStyle = { ...(cap ? { cap } : {}), ...(join ? { join } : {}) };
  return {
    ink: paints.ink(ink, taken.at('stroke')),
    width: taken.needed('stroke-width'),
    ...(alpha < 1 ? { inkAlpha: alpha } : {}),
    ...(cap || join ? { style } : {}),
  };
}

function textOf(element: XmlElement, taken: Taken, paints: Paints): DrawRecord {
  const record: DrawRecord = {
    text: element.text,
    x: taken.needed('x'),
    y: taken.needed('y'),
    size: taken.needed('font-size'),
    weight: taken.number('font-weight') ?? WEIGHT,
    ink: paints.ink(taken.text('fill') ?? '', taken.at('fill')),
    anchor: taken.oneOf('text-anchor', ['start', 'middle', 'end']) ?? 'start',
  };
  taken.oneOf('font-family', ['sans-serif']);
  taken.done();
  return record;
}
