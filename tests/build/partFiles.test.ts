import { describe, expect, it, test } from 'vitest';
import { packParts } from '../../shared/build/parts/packParts';
import { drawingSizes, partDrawings } from '../../shared/build/parts/partDrawings';
import { readPart } from '../../shared/build/parts/readPart';
import { validate } from '../../shared/build/validate';
import { readYaml } from '../../shared/schema/readYaml';
import { paletteOf } from '../../src/bay/drawing/palette';
import { unpacked } from '../../src/bay/drawing/parts/packed';
import type { PathRecord } from '../../src/bay/drawing/record';

const HEAD = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" data-kind="box">\n';
const META = '<metadata>{"unit":"mm","origin":"its corner","size":{"w":10}}</metadata>\n';
const INK = 'fill="var(--alu-a, #f7fafb)"';
const file = (body: string, meta = META): string => `${HEAD}${meta}<g id="body">\n${body}\n</g>\n</svg>\n`;
const read = (source: string) => readPart('assets/parts/box.svg', source, 'box');
const only = (body: string): PathRecord => read(file(body)).groups.body?.[0] as PathRecord;

test('every part file can be read, and shows the colours of the light palette to viewers', () => {
  const palette = paletteOf(false, 'sage');
  const files = partDrawings();
  expect(files.size).toBeGreaterThan(50);
  for (const [name, { shown, groups }] of files) {
    expect(Object.keys(groups), name).toContain('body');
    for (const [token, light] of shown) expect([name, token, light]).toEqual([name, token, palette[token]]);
  }
});

test('every drawing comes out of its packing as it went in', () => {
  const files = [...partDrawings()].map(([name, { meta, groups }]) => [name, { meta, groups }] as const);
  const packed = packParts(files);
  const read = unpacked(JSON.parse(JSON.stringify(packed)));
  for (const [name, part] of files) expect(read.get(name), name).toEqual(part);
  const long = JSON.stringify(files).length;
  expect(JSON.stringify(packed).length).toBeLessThan(0.5 * long);
});

describe('a part file', () => {
  it('gives its shapes as draw records with absolute paths', () => {
    expect(only(`<path d="m1 2 3 4h5" stroke="var(--alu-d, #4c585f)" stroke-width="2"/>`)).toEqual({
      d: 'M1 2L4 6H9',
      ink: 'alu-d',
      width: 2,
    });
    expect(only(`<circle cx="5" cy="6" r="2" ${INK} fill-opacity="0.5"/>`)).toEqual({
      d: 'M3 6A2 2 0 1 1 7 6A2 2 0 1 1 3 6Z',
      fill: 'alu-a',
      fillAlpha: 0.5,
    });
    expect(
      only(`<g transform="translate(3 4)"><rect x="0" y="0" width="2" height="2" ${INK}/></g>`),
    ).toMatchObject({
      matrix: [1, 0, 0, 1, 3, 4],
    });
  });

  it('holds together what keeps its shape', () => {
    const held = `<g class="held" transform="translate(3 4)"><circle cx="0" cy="0" r="2" ${INK}/></g>`;
    expect(read(file(held)).groups.body?.[0]).toMatchObject({ at: [3, 4], holds: [{ fill: 'alu-a' }] });
  });

  it.each<readonly [what: string, source: string, message: RegExp]>([
    ['an element it does not know', file(`<image href="a"/>`), /box\.svg:4:1 <image>/],
    [
      'an attribute it does not know',
      file(`<circle cx="1" cy="1" r="1" ${INK} filter="url(#a)"/>`),
      /:4:\d+ .*"filter"/,
    ],
    ['a style', file(`<circle cx="1" cy="1" r="1" ${INK} style="fill:red"/>`), /:4:\d+ .*"style"/],
    [
      'a colour that is no token',
      file('<circle cx="1" cy="1" r="1" fill="#ff0000"/>'),
      /:4:\d+ "#ff0000" is not var/,
    ],
    [
      'a gradient that is not there',
      file('<circle cx="1" cy="1" r="1" fill="url(#a)"/>'),
      /:4:\d+ no gradient "a"/,
    ],
    ['a missing number', file(`<circle cx="1" cy="1" ${INK}/>`), /:4:1 <circle> needs "r"/],
    [
      'a number that is none',
      file(`<circle cx="1" cy="1" r="1mm" ${INK}/>`),
      /:4:26 r="1mm" is not a number/,
    ],
    ['a path command it does not know', file(`<path d="M0 0T1 1" ${INK}/>`), /:4:14 path command "T"/],
    ['a path with too few numbers', file(`<path d="M0 0L1" ${INK}/>`), /:4:\d+ "L" takes 2 numbers/],
    [
      'a transform that scales',
      file(`<circle cx="1" cy="1" r="1" ${INK} transform="scale(2)"/>`),
      /:4:\d+ transform/,
    ],
    ['an element left open', `${HEAD}${META}<g id="body">`, /:3:1 <g> is never closed/],
    ['a group it does not know', `${HEAD}${META}<g id="bodies"/></svg>`, /:3:8 no group is called "bodies"/],
    ['a group twice', `${HEAD}${META}<g id="body"/>\n<g id="body"/></svg>`, /:4:8 group "body" stands twice/],
    [
      'a size by an unknown key',
      file('', '<metadata>{"unit":"mm","origin":"its corner","size":{"x":1}}</metadata>\n'),
      /:2:1 metadata size/,
    ],
    ['another kind', file('').replace('data-kind="box"', 'data-kind="can"'), /:1:\d+ data-kind/],
    ['a shape that shows nothing', file('<circle cx="1" cy="1" r="1"/>'), /:4:1 <circle> shows nothing/],
    [
      'a held group that is turned',
      file(`<g class="held" transform="rotate(9)"><circle cx="0" cy="0" r="2" ${INK}/></g>`),
      /:4:1 a held group needs/,
    ],
  ])('is refused with file, line and column for %s', (_, source, message) => {
    expect(() => read(source)).toThrow(message);
  });
});

describe('a layout', () => {
  const layout = (part: string): string =>
    [
      'id: van',
      'view: [0, 0, 100, 100]',
      'paint: mulberry',
      'body: van',
      'pipeScale: 1.4',
      'shell: { left: 0, right: 1, firewall: 1, nose: 1, beam: 1, grille: 1, bumper: 1, lower: 1, round: 1, hold: struts }',
      'parts:',
      `  - { id: a, at: [0, 0], z: 1, ${part} }`,
      'lines: [{ id: l, diameterMm: 9, z: 1, lift: 1, fillet: 1, way: [[0, 0], [1, 1]] }]',
      'ports: [{ id: p, boreMm: 13, at: [0, 0], on: { line: l } }]',
      'zones: []',
      'routes: []',
      'mat: { side: left, rect: [0, 0, 1, 1], canAt: [0, 0], rest: { low: [0, 0], high: [0, 0], charging: [0, 0], utility: [0, 0] } }',
      'edge: { x: 0, low: 0, high: 0, charging: 0, utility: 0 }',
    ].join('\n');
  const check = (part: string): unknown =>
    validate('shared/vehicles/van.layout.yaml', readYaml('shared/vehicles/van.layout.yaml', layout(part)));

  it('passes with a drawing there is, in a size it has', () => {
    expect(() => check('kind: block, drawing: tall, size: { w: 9, h: 20 }')).not.toThrow();
    expect(drawingSizes().get('block-tall')).toEqual(['w', 'h']);
  });

  it.each([
    [
      'a kind that nobody draws',
      'kind: battry',
      /van\.layout\.yaml:8:\d+ no-drawing .*did you mean "battery"/,
    ],
    [
      'a variant that nobody draws',
      'kind: block, drawing: tal',
      /:8:\d+ no-drawing .*did you mean "block-tall"/,
    ],
    ['a size its drawing does not have', 'kind: block, size: { r: 9 }', /:8:\d+ no-size .*there is w, h/],
    ['a key that no part has', 'kind: block, flip: true', /:8:\d+ SCN001 unknown key "flip"/],
  ])('is refused for %s', (_, part, message) => {
    expect(() => check(part)).toThrow(message);
  });
});
