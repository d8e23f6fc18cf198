/**
 * Reads a part file of assets/parts: SVG in millimetres about the part's anchor, with its metadata as JSON and its
 * pictures in named groups. Strict: what it does not know is refused with file, line and column.
 */
import { type Matrix, multiply } from '../../../src/bay/drawing/matrix';
import type { Held, PartFile, Piece } from '../../../src/bay/drawing/parts/partFile';
import type { DrawRecord } from '../../../src/bay/drawing/record';
import { attributesOf } from './attributes.ts';
import { metadataSchema } from './metadata.ts';
import { createPaints, type Paints } from './paintOf.ts';
import { type Refuse, refuserOf } from './partError.ts';
import { readXml, type XmlElement } from './readXml.ts';
import { isDrawn, recordOf } from './recordOf.ts';
import { transformOf } from './transform.ts';

/** Names of groups; those with a colon are one of several states. */
const GROUP = /^(body|over|still|turning|hub|(state|foam):[a-z0-9-]+)$/;

export interface ReadPart extends PartFile {
  /** Light values of its tokens, as the file gives them to viewers. */
  readonly shown: ReadonlyMap<string, string>;
}

/** `name` is the file's name without its ending. Throws `PartError`. */
export function readPart(file: string, source: string, name: string): ReadPart {
  const refuse = refuserOf(file, source);
  const root = readXml(source, refuse);
  if (root.name !== 'svg') refuse(root.offset, `<${root.name}> instead of <svg>`);
  const taken = attributesOf(root, refuse);
  taken.text('viewBox') ?? refuse(root.offset, '<svg> needs "viewBox"');
  taken.oneOf('xmlns', ['http://www.w3.org/2000/svg']);
  const kind = taken.text('data-kind');
  if (kind === undefined || (kind !== name && !name.startsWith(`${kind}-`)))
    refuse(taken.at('data-kind'), `data-kind does not go with the name "${name}"`);
  taken.done();
  const paints = createPaints(refuse);
  let meta: PartFile['meta'] | undefined;
  const groups: Record<string, Piece[]> = {};
  for (const child of root.children) {
    if (child.name === 'metadata') meta = metadataOf(child, refuse);
    else if (child.name === 'defs') paints.define(child);
    else if (child.name === 'g') readGroup(child, groups, paints, refuse);
    else refuse(child.offset, `<${child.name}> outside a named group`);
  }
  paints.done();
  if (!groups.body) refuse(root.offset, 'no group "body"');
  return { meta: meta ?? refuse(root.offset, 'no <metadata>'), groups, shown: paints.shown };
}

function metadataOf(element: XmlElement, refuse: Refuse): PartFile['meta'] {
  let data: unknown;
  try {
    data = JSON.parse(element.text);
  } catch {
    refuse(element.offset, '<metadata> is not JSON');
  }
  const { data: meta, error } = metadataSchema.safeParse(data);
  if (!meta) {
    const issue = error?.issues[0];
    refuse(element.offset, `metadata ${issue?.path.join('.')}: ${issue?.message}`);
  }
  return meta as PartFile['meta'];
}

function readGroup(
  element: XmlElement,
  groups: Record<string, Piece[]>,
  paints: Paints,
  refuse: Refuse,
): void {
  const taken = attributesOf(element, refuse);
  const id = taken.text('id') ?? '';
  if (!GROUP.test(id)) refuse(taken.at('id'), `no group is called "${id}"`);
  if (groups[id]) refuse(taken.at('id'), `group "${id}" stands twice`);
  taken.oneOf('display', ['none']);
  taken.done();
  groups[id] = piecesOf(element, undefined, paints, refuse);
}

function piecesOf(element: XmlElement, outer: Matrix | undefined, paints: Paints, refuse: Refuse): Piece[] {
  return element.children.flatMap((child): Piece[] => {
    if (isDrawn(child.name)) return [recordOf(child, outer, paints, refuse)];
    if (child.name !== 'g') refuse(child.offset, `<${child.name}> is not known in a part file`);
    const taken = attributesOf(child, refuse);
    const transform = taken.text('transform');
    const own = transform === undefined ? undefined : transformOf(transform, taken.at('transform'), refuse);
    const isHeld = taken.oneOf('class', ['held', 'shadow']) === 'held';
    taken.done();
    if (isHeld) return [heldOf(child, own, outer, paints, refuse)];
    return piecesOf(child, own && outer ? multiply(outer, own) : (own ?? outer), paints, refuse);
  });
}

/** A group that keeps its shape: moved, not turned, and not in another one that is moved. */
function heldOf(
  element: XmlElement,
  own: Matrix | undefined,
  outer: Matrix | undefined,
  paints: Paints,
  refuse: Refuse,
): Held {
  if (outer) refuse(element.offset, 'a held group inside a moved one');
  if (own?.[0] !== 1 || own[1] !== 0 || own[2] !== 0 || own[3] !== 1)
    refuse(element.offset, 'a held group needs transform="translate(x y)" and nothing else');
  const [, , , , x, y] = own as Matrix;
  const holds = piecesOf(element, undefined, paints, refuse);
  if (holds.some((piece) => 'holds' in piece)) refuse(element.offset, 'a held group in a held group');
  return { at: [x, y], holds: holds as readonly DrawRecord[] };
}
