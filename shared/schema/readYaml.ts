/**
 * Reads one YAML document (version 1.2, core schema) and keeps the position of every node, so that whoever checks the
 * data can say file, line and column. Used when the project is built and when a foreign file is opened.
 *
 * Refused: a key twice, a tag, more than one document, an alias or anchor, a number JSON cannot hold, keys that reach an
 * object's own workings, and what no person would write (yamlText.ts).
 */
import { type Document, isMap, isNode, isPair, isScalar, LineCounter, parseAllDocuments } from 'yaml';
import type { Fix } from './problem.ts';
import { refusedNodes } from './refusedNodes.ts';
import { placesIn } from './yamlPlaces.ts';
import { slipOf } from './yamlSlip.ts';
import { refuseText, TOO_DEEP, withLineEnds, withoutMark } from './yamlText.ts';

export type YamlPath = readonly (string | number)[];

/** A stretch of one line, counted from 1 in UTF-16 units. */
export interface YamlPlace {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

export interface YamlSource {
  readonly file: string;
  readonly text: string;
  readonly data: unknown;
  /** `file:line:column` of the node at `path`, or of its nearest ancestor that exists. */
  readonly at: (path: YamlPath) => string;
  /** As `at`, but of the key itself; for "unknown key". */
  readonly atKey: (path: YamlPath) => string;
  /** As `at`: the node, or what of it stands on its first line. */
  readonly placeOf: (path: YamlPath) => YamlPlace;
  readonly keyPlaceOf: (path: YamlPath) => YamlPlace;
  /** Where `part` stands in the text of the node at `path`; undefined where it is written otherwise, or over several lines. */
  readonly partOf: (path: YamlPath, part: string) => YamlPlace | undefined;
}

/** `message` is `file:line:column code text`: what was wrong, and what would be right where that is not plain. */
export class YamlError extends Error {
  override readonly name = 'YamlError';

  constructor(
    /** `file:line:column`. */
    readonly place: string,
    readonly code: string,
    readonly text: string,
    /** Where one thing can be meant. */
    readonly fix?: Fix,
  ) {
    super(`${place} ${code} ${text}`);
  }
}

export interface ParsedYaml {
  /** Null where what was written could not be read as one document. */
  readonly source: YamlSource | null;
  readonly errors: readonly YamlError[];
}

/** Parses `text`; `file` is only used in messages. Throws `YamlError`. */
export function readYaml(file: string, text: string): YamlSource {
  const { source, errors } = parseYaml(file, text);
  if (errors.length > 0 || source === null) throw errors[0];
  return source;
}

/** The same, with all that is wrong; a key that stands twice does not keep the rest from being read. */
export function parseYaml(file: string, given: string): ParsedYaml {
  const text = withLineEnds(withoutMark(given));
  try {
    refuseText(file, text);
    return parsed(file, text);
  } catch (error) {
    if (error instanceof YamlError) return { source: null, errors: [error] };
    if (error instanceof RangeError)
      return { source: null, errors: [new YamlError(`${file}:1:1`, 'too-deep', TOO_DEEP)] };
    throw error;
  }
}

function parsed(file: string, text: string): ParsedYaml {
  const lines = new LineCounter();
  const where = (offset: number): string => {
    const { line, col } = lines.linePos(offset);
    return `${file}:${line}:${col}`;
  };
  const documents = parseAllDocuments(text, {
    version: '1.2',
    schema: 'core',
    uniqueKeys: false,
    strict: true,
    lineCounter: lines,
    prettyErrors: false,
  });
  if ('empty' in documents || documents.length === 0) throw holdsNothing(file);
  const document = documents[0] as Document.Parsed;
  const problem = document.errors[0] ?? document.warnings[0];
  if (problem) throw slipOf(file, text, problem, lines);
  const second = documents[1];
  if (second) throw new YamlError(where(second.range[0]), 'second-document', 'one file holds one document');
  const errors = refusedNodes(document, where);
  const fatal = errors.find(({ code }) => code !== 'duplicate-key');
  if (fatal) return { source: null, errors: errors.slice(0, MOST_ERRORS) };
  const source = sourceOf(file, text, document, lines);
  if (source.data === null) throw holdsNothing(file);
  return { source, errors: errors.slice(0, MOST_ERRORS) };
}

const holdsNothing = (file: string): YamlError =>
  new YamlError(`${file}:1:1`, 'empty', 'the file holds nothing');

const MOST_ERRORS = 20;

function sourceOf(file: string, text: string, document: Document.Parsed, lines: LineCounter): YamlSource {
  const where = (offset: number): string => {
    const { line, col } = lines.linePos(offset);
    return `${file}:${line}:${col}`;
  };
  const placeIn = placesIn(text, lines);
  return {
    file,
    text,
    data: document.toJS(),
    at: (path) => where(startOf(nodeAt(document, path))),
    atKey: (path) => where(startOf(keyAt(document, path))),
    placeOf: (path) => placeIn(nodeAt(document, path)),
    keyPlaceOf: (path) => placeIn(keyAt(document, path)),
    partOf: (path, part) => placeIn.part(document.getIn(path, true), part),
  };
}

/** The node at `path`, or its nearest ancestor that exists. */
function nodeAt(document: Document.Parsed, path: YamlPath): unknown {
  for (let depth = path.length; depth > 0; depth--) {
    const node = document.getIn(path.slice(0, depth), true);
    if (isNode(node) && node.range) return node;
  }
  return document.contents;
}

function keyAt(document: Document.Parsed, path: YamlPath): unknown {
  const parent = path.length > 1 ? document.getIn(path.slice(0, -1), true) : document.contents;
  const key = path[path.length - 1];
  if (isMap(parent)) {
    const pair = parent.items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === key);
    if (pair) return pair.key;
  }
  return nodeAt(document, path);
}

function startOf(node: unknown): number {
  return isNode(node) && node.range ? node.range[0] : 0;
}
