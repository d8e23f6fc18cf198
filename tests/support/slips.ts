/**
 * Slips of the pen over a scenario file, made from its own keys and a seed: a key mistyped, a quantity with another unit or
 * none, a key deleted, doubled or indented wrongly. Each says on which line it is and what would be right.
 */
import { isMap, isPair, isScalar, LineCounter, parseDocument, visit } from 'yaml';
import { keyedUniform } from '../../src/numerics/keyedRandom';

export const SLIP_KINDS = [
  'typo',
  'wrong unit',
  'bare number',
  'deleted',
  'doubled',
  'wrong indent',
] as const;
export type SlipKind = (typeof SLIP_KINDS)[number];

export interface Slip {
  readonly kind: SlipKind;
  readonly key: string;
  readonly text: string;
  /** Where it may be told: of what is missing, anywhere in the group that lacks it. */
  readonly lines: readonly [first: number, last: number];
  /** What would be right; any of these in a fix or in what is said. */
  readonly right: readonly string[];
}

interface Key {
  readonly path: string;
  readonly name: string;
  readonly from: number;
  readonly keyTo: number;
  readonly value: string;
  readonly valueFrom: number;
  readonly to: number;
  readonly line: number;
  readonly lastLine: number;
  readonly isBlock: boolean;
  readonly group: readonly [first: number, last: number];
}

const QUANTITY = /^"?(-?[\d.]+) ?(%|[a-zA-Z/0-9]+(?: abs)?)"?$/;
const MISWRITTEN: Readonly<Record<string, readonly string[]>> = {
  g: ['gr', 'grams', 'G'],
  kg: ['kgs', 'kilo', 'KG'],
  oz: ['ounces', 'OZ', 'ozs'],
  degC: ['C', 'degrees', 'deg C', 'celsius', 'DegC'],
  '%': [' percent', ' pct', ' %%'],
  kPa: ['kpa', 'KPa', 'kPas'],
  'kPa abs': ['kPa', 'kpa abs'],
  min: ['mins', 'minutes', 'minute'],
  s: ['sec', 'seconds', 'secs'],
  m3: ['M3', 'm³', 'cbm3'],
  'W/m2': ['W/m²', 'w/m2', 'W'],
};
/** Seconds, minutes and metres of a plan or a condition have sentences of their own. */
const UNITLESS = new Set(['turn', 'rpm', 'text', 'title', 'history', 'complaint']);

export function slipsOf(text: string, seed: number): Slip[] {
  const keys = keysOf(text);
  const said = meaningOf(text);
  const slips = keys.flatMap((key, at) => {
    const draw = (what: string): number => keyedUniform(seed, 'slips', what, at);
    return [
      typo(text, key, keys, draw('typo')),
      ...quantitySlips(text, key, draw('unit')),
      deleted(text, key),
      doubled(text, key),
      ...(key.isBlock ? [indented(text, key, draw('indent'))] : []),
    ];
  });
  return slips.filter((slip) => meaningOf(slip.text) !== said);
}

/** What is read of it: a line moved by a space may say what it said before. */
const meaningOf = (text: string): string => {
  const document = parseDocument(text);
  return document.errors.length > 0 ? 'nothing' : JSON.stringify(document.toJS());
};

function keysOf(text: string): Key[] {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter });
  const lineAt = (offset: number): number => counter.linePos(offset).line;
  const found: Key[] = [];
  visit(document, {
    Pair(_, pair, above) {
      if (!isScalar(pair.key) || !pair.key.range) return;
      const names = above.flatMap((one) => (isPair(one) && isScalar(one.key) ? [String(one.key.value)] : []));
      const map = above.at(-1);
      const [from, keyTo] = pair.key.range;
      const range = (pair.value as { range?: [number, number, number] } | null)?.range ?? [
        keyTo,
        keyTo,
        keyTo,
      ];
      const value = text.slice(range[0], range[1]);
      const group = isMap(map) && map.range ? map.range : [0, text.length, text.length];
      const isBlock = text.slice(text.lastIndexOf('\n', from) + 1, from).trim() === '';
      const to = range[0] + value.trimEnd().length;
      found.push({
        ...{
          path: [...names, String(pair.key.value)].join('.'),
          name: String(pair.key.value),
          from,
          keyTo,
          value,
        },
        ...{ valueFrom: range[0], to, line: lineAt(from), lastLine: lineAt(Math.max(from, to - 1)), isBlock },
        group: [Math.max(1, lineAt(group[0]) - 1), lineAt(Math.max(0, group[1] - 1))],
      });
    },
  });
  return found;
}

const replaced = (text: string, from: number, to: number, by: string): string =>
  text.slice(0, from) + by + text.slice(to);

function typo(text: string, key: Key, keys: readonly Key[], draw: number): Slip {
  const ways = [swapped, dropped, another].map((way) => way(key.name, draw));
  const known = new Set(keys.map(({ name }) => name));
  const wrong = ways.find((way) => way !== key.name && way !== '' && !known.has(way)) ?? `${key.name}x`;
  return {
    ...{ kind: 'typo', key: key.path, lines: [key.line, key.line], right: [key.name] },
    text: replaced(text, key.from, key.keyTo, wrong),
  };
}

const placeIn = (word: string, draw: number, least: number): number =>
  Math.min(word.length - 1, least + Math.floor(draw * Math.max(1, word.length - least)));

function swapped(word: string, draw: number): string {
  const at = Math.min(word.length - 2, placeIn(word, draw, 1));
  return at < 0 ? word : word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2);
}

function dropped(word: string, draw: number): string {
  const at = placeIn(word, draw, 1);
  return word.length < 4 ? word : word.slice(0, at) + word.slice(at + 1);
}

function another(word: string, draw: number): string {
  const at = placeIn(word, draw, 1);
  return `${word.slice(0, at)}${word[at]}${word[at]}${word.slice(at + 1)}`;
}

function quantitySlips(text: string, key: Key, draw: number): Slip[] {
  const [, number, unit] = QUANTITY.exec(key.value.trim()) ?? [];
  const wrong = MISWRITTEN[unit ?? ''];
  if (wrong === undefined || UNITLESS.has(key.name) || key.name === 'run-on') return [];
  // whether a bare mass was grams or ounces nobody can know
  const either = unit === 'oz' ? [`${number} g`] : [];
  const right = [key.value.trim().replaceAll('"', ''), `${number} ${unit}`, ...either];
  const told = { key: key.path, lines: [key.line, key.line] as const, right };
  const written = wrong[Math.floor(draw * wrong.length)];
  const space = unit === '%' ? '' : ' ';
  return [
    {
      ...told,
      kind: 'wrong unit',
      text: replaced(text, key.valueFrom, key.to, `${number}${space}${written}`),
    },
    { ...told, kind: 'bare number', text: replaced(text, key.valueFrom, key.to, number as string) },
  ];
}

function deleted(text: string, key: Key): Slip {
  const told = {
    kind: 'deleted',
    key: key.path,
    lines: key.group,
    right: [key.name, ...key.path.split('.').slice(-2, -1)],
  } as const;
  if (key.isBlock) {
    const from = text.lastIndexOf('\n', key.from) + 1;
    const end = text.indexOf('\n', Math.max(key.to - 1, key.from));
    return { ...told, text: replaced(text, from, end < 0 ? text.length : end + 1, '') };
  }
  const after = /^\s*,\s*/.exec(text.slice(key.to))?.[0] ?? '';
  const before = after === '' ? (/,\s*$/.exec(text.slice(0, key.from))?.[0] ?? '') : '';
  return { ...told, text: replaced(text, key.from - before.length, key.to + after.length, '') };
}

function doubled(text: string, key: Key): Slip {
  const told = {
    kind: 'doubled',
    key: key.path,
    lines: [key.line, key.lastLine + 1 + key.lastLine - key.line] as const,
    right: [key.name],
  } as const;
  if (key.isBlock) {
    const from = text.lastIndexOf('\n', key.from) + 1;
    const end = text.indexOf('\n', Math.max(key.to - 1, key.from));
    const block = text.slice(from, end < 0 ? text.length : end + 1);
    return { ...told, text: replaced(text, from, from, block) };
  }
  const block = text.slice(key.from, key.to);
  const lead = text.slice(text.lastIndexOf('\n', key.from) + 1, key.from);
  const between = /^\s*(- )+$/.test(lead) ? `\n${' '.repeat(lead.length)}` : ', ';
  return { ...told, text: replaced(text, key.from, key.from, `${block}${between}`) };
}

function indented(text: string, key: Key, draw: number): Slip {
  const from = text.lastIndexOf('\n', key.from) + 1;
  const depth = key.from - from;
  const shift = [1, 2, -1, -2][Math.floor(draw * 4)];
  const wanted = depth + shift < 0 ? depth + 1 : depth + shift;
  return {
    ...{
      kind: 'wrong indent',
      key: key.path,
      lines: [key.line, key.line],
      right: ['indent', 'column', 'under'],
    },
    text: replaced(text, from, key.from, ' '.repeat(wanted)),
  };
}
