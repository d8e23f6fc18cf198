/**
 * A template in another language: its own lines, with the sentences and the notes of its words there. Notes are remarks on
 * lines of their own, in both files in the same order; whatever no person reads stays as it is.
 */
import { isMap, isScalar, isSeq, parse } from 'yaml';
import type { ScenarioWords } from '../../../shared/schema/scenarioWords';
import { changed, type TextChange } from '../edit/changes';
import { nodeAt, type Path, type Tree, treeOf } from '../edit/tree';

type Words = ScenarioWords & Readonly<Partial<Record<'author' | 'history' | 'teacher', string>>>;

const WIDTH = 118;
const INDENT = '  ';
/** What stands without quotes in brackets and out of them. */
const PLAIN = /^[\p{L}¿¡][^:#,{}[\]"'&*|>%@`\\]*$/u;
const NOTE = /^(\s*)#.*$/;

/** `told`: its words in `language`. */
export function toldTemplate(template: string, told: string, language: string): string {
  const tree = treeOf(template);
  if (!tree) return template;
  const words = parse(told) as Words;
  const changes = [
    inPlace(tree, ['language'], language),
    ...sentencesOf(tree, words).map(([path, sentence]) => inPlace(tree, path, sentence)),
  ];
  return withNotes(changed(template, changes.flat()), told);
}

function sentencesOf(tree: Tree, words: Words): (readonly [Path, string])[] {
  const { title, author, complaint, owner, papers, deliver, hints, debrief, history, teacher } = words;
  return [
    [['title'], title],
    [['author'], author ?? ''],
    [['complaint'], complaint],
    [['contents', 'history'], history ?? ''],
    ...Object.entries(owner).map(([key, answer]) => [['owner', key], answer ?? ''] as const),
    ...Object.entries(papers).flatMap(([id, paper]) => {
      const at = ['papers', placeOf(tree, 'papers', id)];
      const lines = paper.lines.map((line, index) => [[...at, 'lines', index], line] as const);
      return [[[...at, 'title'], paper.title] as const, ...lines];
    }),
    ...Object.entries(deliver).map(
      ([id, text]) => [['deliver', placeOf(tree, 'deliver', id), 'text'], text] as const,
    ),
    ...hints.map((hint, index) => [['hints', index], hint] as const),
    [['debrief'], debrief],
    [['teacher'], teacher ?? ''],
  ];
}

function placeOf(tree: Tree, list: string, id: string): number {
  const node = nodeAt(tree, [list]);
  return isSeq(node) ? node.items.findIndex((item) => isMap(item) && item.get('id') === id) : -1;
}

/** Nothing where there is no such sentence, or no other. */
function inPlace(tree: Tree, path: Path, sentence: string): TextChange[] {
  const node = nodeAt(tree, path);
  if (!isScalar(node) || !node.range || sentence === '') return [];
  const [from, to] = node.range;
  if (node.type === 'BLOCK_FOLDED') return [{ from, to, insert: `>-\n${wrapped(sentence.trim())}\n` }];
  return [{ from, to, insert: PLAIN.test(sentence) ? sentence : JSON.stringify(sentence) }];
}

function wrapped(sentence: string): string {
  const lines = [INDENT];
  for (const word of sentence.split(/\s+/)) {
    const line = lines[lines.length - 1];
    if (line === INDENT) lines[lines.length - 1] += word;
    else if (line.length + 1 + word.length <= WIDTH) lines[lines.length - 1] += ` ${word}`;
    else lines.push(INDENT + word);
  }
  return lines.join('\n');
}

function withNotes(text: string, told: string): string {
  const notes = told.split('\n').filter((line) => NOTE.test(line));
  return text
    .split('\n')
    .map((line) => {
      const note = NOTE.exec(line);
      return note ? `${note[1]}${notes.shift() ?? line.trimStart()}` : line;
    })
    .join('\n');
}
