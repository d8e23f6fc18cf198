/**
 * The changes of a text that a form's wish comes to. What would contradict it is changed along and told: the answer, the
 * diagnosis and the repair of the solution with a fault, the varied weather with the weather, refrigerant, charge, ports and a person who may
 * lay hands on it with the car.
 */
import { isMap, isScalar, isSeq } from 'yaml';
import { parseQuantity } from '../../units/quantity';
import { CELSIUS_ZERO_K } from '../../units/temperature';
import { addGroup } from './addMissing';
import type { TextChange } from './changes';
import { addItem, removeItem } from './listItems';
import { portsAlong } from './portsAlong';
import { setValue } from './setValue';
import { lengthAt, nodeAt, type Path, scalarAt, type Tree, treeOf } from './tree';
import type { Along, Wish } from './wish';

export interface Changes {
  readonly changes: readonly TextChange[];
  readonly along: readonly Along[];
}

/** Null where the text cannot be read or has no place for it. */
export function changesFor(text: string, wish: Wish): Changes | null {
  const tree = treeOf(text);
  if (!tree) return null;
  const found = wished(text, tree, wish);
  const changes = found.map(([change]) => change);
  if (changes.length === 0 || changes[0] === null) return null;
  const along = found.flatMap(([change, how]) => (change !== null && how !== null ? [how] : []));
  return { changes: together(changes.filter((change) => change !== null)), along: [...new Set(along)] };
}

/** What is put in at one place becomes one change, so that its order is plain. */
function together(changes: readonly TextChange[]): TextChange[] {
  const found: TextChange[] = [];
  for (const change of changes) {
    const { from, to, insert } = change;
    const at = found.findIndex((one) => from === to && one.from === from && one.to === to);
    if (at < 0) found.push(change);
    else found[at] = { from, to, insert: found[at].insert + insert };
  }
  return found;
}

/** The wish itself first, then what goes along. */
type Found = readonly (readonly [TextChange | null, Along | null])[];

function wished(text: string, tree: Tree, wish: Wish): Found {
  const set = (path: Path, value: string | number): TextChange | null => setValue(text, tree, path, value);
  const person = scalarAt(tree, ['person']);
  if ('add' in wish) {
    const item = `{ fault: ${wish.id}, severity: ${wish.severity} }`;
    const sound = namedAt(tree, SOUND);
    const answer = sound < 0 ? addItem(text, tree, CAUSES, wish.id) : set([...CAUSES, sound], wish.id);
    const isNamed = namedAt(tree, wish.id) >= 0;
    return [[addItem(text, tree, ['faults'], item), null], ...(isNamed ? [] : [[answer, 'answer'] as const])];
  }
  if ('remove' in wish) {
    const id = scalarAt(tree, ['faults', wish.at, 'fault']);
    const named = namedAt(tree, id);
    const isLast = lengthAt(tree, ['faults']) === 1;
    const answer = isLast ? set([...CAUSES, named], SOUND) : removeItem(text, tree, CAUSES, named);
    return [
      [removeItem(text, tree, ['faults'], wish.at), null],
      ...(named < 0 ? [] : [[answer, 'answer'] as const]),
    ];
  }
  switch (wish.set) {
    case 'title':
    case 'complaint':
      return [[set([wish.set], wish.to), null]];
    case 'humidity':
      return [[set(['weather', 'humidity'], `${wish.toPercent}%`), null]];
    case 'charge':
      return [[set(['contents', 'charge'], `${wish.toG} g`), null]];
    case 'severity':
      return [[set(['faults', wish.at, 'severity'], wish.to), null]];
    case 'temperature':
      return [[set(['weather', 'temperature'], `${wish.toC} degC`), null], ...varied(text, tree, wish.toC)];
    case 'vehicle':
      return [
        [set(['vehicle'], wish.to), null],
        ...portsAlong(text, tree, wish.ports).map((change) => [change, 'ports'] as const),
        ...filled(text, tree, wish),
        ...(person === null || wish.persons.includes(String(person))
          ? []
          : [[set(['person'], wish.persons[0]), 'person'] as const]),
      ];
    case 'fault':
      return [
        [set(['faults', wish.at, 'fault'], wish.to), null],
        ...renamed(text, tree, wish),
        ...repaired(text, tree, wish.parts),
      ];
  }
}

/** A loop that nothing is said of yet is filled as the car's label has it. */
function filled(
  text: string,
  tree: Tree,
  { refrigerant, chargeG }: { readonly refrigerant: string; readonly chargeG: number },
): Found {
  const loop = nodeAt(tree, ['contents']);
  const charge = `${chargeG} g`;
  if (isMap(loop) && loop.items.length > 0)
    return [
      [setValue(text, tree, ['contents', 'refrigerant'], refrigerant), 'contents'],
      [setValue(text, tree, ['contents', 'charge'], charge), 'contents'],
    ];
  const lines = [`refrigerant: ${refrigerant}`, `charge: ${charge}`];
  return [[addGroup(text, tree, ['contents'], lines), 'contents']];
}

const CAUSES = ['answer', 'causes'];
/** The answer for a car that has no fault. */
const SOUND = 'nothing-wrong';

function namedAt(tree: Tree, id: unknown): number {
  const causes = nodeAt(tree, CAUSES);
  return isSeq(causes) ? causes.items.findIndex((item) => isScalar(item) && item.value === id) : -1;
}

/** The answer, and the solution's `diagnose` lines, where they named the fault that was there before. */
function renamed(text: string, tree: Tree, { at, to }: { readonly at: number; readonly to: string }): Found {
  const before = scalarAt(tree, ['faults', at, 'fault']);
  if (typeof before !== 'string' || before === to) return [];
  const named = namedAt(tree, before);
  return [
    ...(named >= 0 ? [[setValue(text, tree, [...CAUSES, named], to), 'answer'] as const] : []),
    ...said(text, tree, ['diagnose', before, to], 'plan'),
  ];
}

/** The part in the answer that mended the fault before, and the solution's `replace` lines, where the new one needs another. */
function repaired(
  text: string,
  tree: Tree,
  parts: { readonly before: readonly string[]; readonly after: readonly string[] },
): Found {
  const list = nodeAt(tree, PARTS);
  const listed = isSeq(list) ? list.items.map((item) => (isScalar(item) ? String(item.value) : '')) : [];
  const at = listed.findIndex((part) => parts.before.includes(part));
  const [to] = parts.after;
  if (at < 0 || to === undefined || parts.after.some((part) => listed.includes(part))) return [];
  return [
    [setValue(text, tree, [...PARTS, at], to), 'parts'],
    ...said(text, tree, ['replace', listed[at], to], 'parts'),
  ];
}

/** Lines of the solution that say `verb` of one thing, saying it of another. */
function said(
  text: string,
  tree: Tree,
  [verb, of, to]: readonly [string, string, string],
  how: Along,
): Found {
  const lines = nodeAt(tree, SOLUTION);
  return (isSeq(lines) ? lines.items : []).flatMap((line, index) => {
    const words = isScalar(line) ? String(line.value).split(' ') : [];
    if (words[0] !== verb || words[1] !== of) return [];
    return [
      [setValue(text, tree, [...SOLUTION, index], [verb, to, ...words.slice(2)].join(' ')), how] as const,
    ];
  });
}

const PARTS = ['answer', 'parts'];
const SOLUTION = ['plans', 'solution'];

/** A varied temperature moves with the weather's, or the change would change nothing. */
function varied(text: string, tree: Tree, toC: number): Found {
  const before = celsiusOf(scalarAt(tree, ['weather', 'temperature']));
  const list = nodeAt(tree, ['varies']);
  if (before === null || !isSeq(list)) return [];
  return list.items.flatMap((item, index) => {
    if (!isMap(item) || item.get('what') !== 'temperature') return [];
    return ['from', 'to'].flatMap((end) => {
      const path = ['varies', index, end];
      const was = celsiusOf(scalarAt(tree, path));
      if (was === null) return [];
      const moved = Math.round((was + toC - before) * 10) / 10;
      return [[setValue(text, tree, path, `${moved} degC`), 'varies'] as const];
    });
  });
}

function celsiusOf(written: string | number | null): number | null {
  try {
    return parseQuantity(String(written), 'temperature') - CELSIUS_ZERO_K;
  } catch {
    return null;
  }
}
