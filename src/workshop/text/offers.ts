/**
 * What could be written where a cursor stands: the keys that are still missing there, the values that may stand there, the
 * words of a plan's line one after the other.
 */
import type { KeyDescription } from '../../../shared/schema/describeKeys';
import type { Choices } from '../reader/protocol';
import type { Vocabulary } from '../reader/vocabulary';
import { lineOffers } from './lineOffers';
import { keysWritten, type PlaceAt } from './placeAt';

export interface Offer {
  /** What is written. */
  readonly insert: string;
  /** What is shown in its place; what is written where nothing is said. */
  readonly shown?: string;
  /** What it is, in words or as an id of such words. */
  readonly note?: string;
  readonly isKey?: true;
}

export interface Offers {
  readonly from: number;
  readonly list: readonly Offer[];
}

export interface Known {
  readonly vocabulary: Vocabulary;
  /** Null until a text without errors was seen. */
  readonly choices: Choices | null;
  /** The car that is written now. */
  readonly vehicle: string;
}

/** Where `written` begins with a number, so that only its unit is missing. */
const NUMBER = /^[+-]?\d+(\.\d+)?\s*/;
/** Parts of a condition, which is a key of itself. */
const CONDITION = ['event', 'subject', 'signal', 'over', 'under', 'is', 'all', 'any', 'not'];

export function offersAt(text: string, place: PlaceAt, written: string, known: Known): Offers | null {
  if (place.writes === 'text') return null;
  const id = idOf(place.path);
  const here = known.vocabulary.keys.find((key) => key.id === id);
  if (place.writes === 'key') return { from: place.from, list: keysUnder(text, place, id, known) };
  if (here?.is === 'quantity')
    return withUnit(place.from, written, known.vocabulary.units[String(here.of?.[0])]);
  if (isPlan(place.path)) {
    const line = lineOffers(written, known);
    return line && { from: place.from + line.from, list: line.list };
  }
  const list = valuesAt(id, here, place.path, known);
  if (list.length > 0) return { from: place.from, list };
  const keys = typeof place.path.at(-1) === 'number' ? keysUnder(text, place, id, known) : [];
  return keys.length > 0 ? { from: place.from, list: keys } : null;
}

/** `faults[].fault` for `faults/0/fault`. */
export const idOf = (path: PlaceAt['path']): string =>
  path.reduce<string>(
    (id, part) => (typeof part === 'number' ? `${id}[]` : id === '' ? part : `${id}.${part}`),
    '',
  );

const isPlan = (path: PlaceAt['path']): boolean =>
  path[0] === 'plans' && typeof path[2] === 'number' && (path.length === 3 || path[3] === 'repeat');

function keysUnder(text: string, place: PlaceAt, id: string, { vocabulary }: Known): Offer[] {
  const there = keysWritten(text);
  const isThere = (key: string): boolean =>
    place.beside?.includes(key) === true || there.has([...place.path, key].join('/'));
  if (inCondition(place.path, vocabulary.keys))
    return CONDITION.filter((key) => !isThere(key)).map((key) => ({
      insert: `${key}: `,
      shown: key,
      isKey: true,
    }));
  const before = id === '' ? '' : `${id}.`;
  return vocabulary.keys
    .filter((key) => key.id.startsWith(before) && /^[\w-]+$/.test(key.id.slice(before.length)))
    .filter((key) => !isThere(key.id.slice(before.length)))
    .map((key) => {
      const name = key.id.slice(before.length);
      return { insert: opening(name, key, place), shown: name, note: key.id, isKey: true };
    });
}

/** A group or a list begins on a line of its own, unless it stands within brackets. */
function opening(name: string, { is }: KeyDescription, { inBrackets }: PlaceAt): string {
  const isLong = is === 'group' || is === 'list' || is === 'plan';
  return isLong && !inBrackets ? `${name}:` : `${name}: `;
}

function inCondition(path: PlaceAt['path'], keys: readonly KeyDescription[]): boolean {
  return path.some((_, at) => {
    const id = idOf(path.slice(0, at + 1));
    return keys.some((key) => key.id === id && (key.is === 'condition' || key.is === 'rule'));
  });
}

function withUnit(from: number, written: string, units: readonly string[] = []): Offers | null {
  const number = NUMBER.exec(written);
  if (!number) return null;
  const value = number[0].trim();
  return { from, list: units.map((unit) => ({ insert: unit === '%' ? `${value}%` : `${value} ${unit}` })) };
}

function valuesAt(
  id: string,
  here: KeyDescription | undefined,
  path: PlaceAt['path'],
  known: Known,
): readonly Offer[] {
  const { vocabulary, choices, vehicle } = known;
  const ids = (list: readonly string[] | undefined): Offer[] => (list ?? []).map((insert) => ({ insert }));
  const titled = (list: readonly string[]): Offer[] =>
    list.map((insert) => ({
      insert,
      note: vocabulary.faults.find((fault) => fault.id === insert)?.title ?? '',
    }));
  switch (id) {
    case 'vehicle':
      return vocabulary.vehicles.map(({ id: insert, name }) => ({ insert, note: name }));
    case 'faults[].fault':
      return vocabulary.faults
        .filter(
          ({ vehicles }) =>
            !vocabulary.vehicles.some((one) => one.id === vehicle) || vehicles.includes(vehicle),
        )
        .map(({ id: insert, title }) => ({ insert, note: title }));
    case 'answer.causes[]':
      return titled(choices?.cause ?? vocabulary.faults.map((fault) => fault.id));
    case 'answer.parts[]':
      return ids(choices?.replaceable);
    case 'faults[].site':
      return ids(choices?.['leak-place']);
    case 'found.caps[].port':
    case 'found.covers[].port':
      return ids(choices?.port);
    case 'rubric.use[]':
      return ids(vocabulary.rubrics);
    case 'rubric.drop[]':
      return ids(choices?.rule);
  }
  if (inCondition(path, vocabulary.keys)) {
    const last = path.at(-1);
    if (last === 'event') return ids(vocabulary.events);
    if (last === 'signal') return ids(choices?.signal);
  }
  return ids(here?.is === 'choice' ? here.of?.map(String) : undefined);
}
