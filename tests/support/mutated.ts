/**
 * A scenario file spoilt by a seed: letters changed, lines moved, or keys and values exchanged within what it says. The same
 * seed and number give the same file.
 */
import { Document, parseDocument, stringify } from 'yaml';
import { keyedUniform } from '../../src/numerics/keyedRandom';

const ODD = [
  '\t',
  '\n',
  ':',
  '- ',
  '{',
  '}',
  '[',
  ']',
  '"',
  "'",
  '#',
  '&a',
  '*a',
  '!',
  '|',
  '>',
  '%',
  '\0',
  '\ufeff',
  'é',
  '🙂',
  '1e309',
  '~',
  '---\n',
  '<<: ',
];
const VALUES: readonly unknown[] = [
  null,
  true,
  false,
  0,
  -1,
  1e300,
  3.7,
  '',
  'x',
  '480 g',
  '30 degC',
  [],
  {},
  [[]],
  { a: {} },
  'a'.repeat(500),
];

export function mutated(text: string, seed: number, number: number): string {
  const draw = (what: string): number => keyedUniform(seed, 'mutated', what, number);
  return draw('way') < 0.6 ? lettersChanged(text, draw) : treeChanged(text, draw);
}

type Draw = (what: string) => number;

/** One to four times: a stretch taken out, doubled, moved, or something odd put in. */
function lettersChanged(text: string, draw: Draw): string {
  let changed = text;
  const times = 1 + Math.floor(4 * draw('times'));
  for (let time = 0; time < times; time++) {
    const at = Math.floor(draw(`at${time}`) * changed.length);
    const to = at + Math.floor(draw(`size${time}`) ** 3 * 200);
    const part = changed.slice(at, to);
    const way = Math.floor(5 * draw(`kind${time}`));
    const odd = ODD[Math.floor(draw(`odd${time}`) * ODD.length)];
    const put = [
      odd,
      part + part,
      '',
      [...part].reverse().join(''),
      String.fromCharCode(Math.floor(0xffff * draw(`letter${time}`))),
    ][way];
    changed = changed.slice(0, at) + put + changed.slice(way === 0 ? at : to);
  }
  return changed;
}

const known = new Map<string, unknown>();
function meaningOf(text: string): unknown {
  if (!known.has(text)) known.set(text, parseDocument(text).toJS());
  return known.get(text);
}

/** One to three places of what the file says: taken out, another value, another's value. */
function treeChanged(text: string, draw: Draw): string {
  const data: unknown = structuredClone(meaningOf(text));
  const times = 1 + Math.floor(3 * draw('times'));
  for (let time = 0; time < times; time++) {
    const places = placesIn(data);
    const place = (what: string) => places[Math.floor(draw(`${what}${time}`) * places.length)];
    const { group, key } = place('place');
    const way = Math.floor(4 * draw(`kind${time}`));
    const held = group as Record<string, unknown>;
    if (way === 0) delete held[key];
    else if (way === 1) held[key] = structuredClone(VALUES[Math.floor(draw(`value${time}`) * VALUES.length)]);
    else if (way === 2)
      held[key] = structuredClone((place('other').group as Record<string, unknown>)[place('other').key]);
    else held[`${key}x`] = structuredClone(held[key]);
  }
  return draw('flow') < 0.5
    ? stringify(data)
    : new Document(data).toString({ flowCollectionPadding: false, lineWidth: 0 });
}

interface Place {
  readonly group: object;
  readonly key: string;
}

function placesIn(data: unknown): Place[] {
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, inner]) => [{ group: data, key }, ...placesIn(inner)]);
}
