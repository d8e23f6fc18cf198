/**
 * Reads one YAML document (version 1.2, core schema) and keeps the position of every node, so that whoever checks the
 * data can say file, line and column. Used when the project is built and when a foreign file is opened.
 *
 * Refused: a key twice, an unknown tag, more than one document, an alias, a number JSON cannot hold, the key
 * `__proto__`.
 */
import { type Document, isMap, isNode, isPair, isScalar, LineCounter, parseAllDocuments, visit } from 'yaml';
import { placesIn } from './yamlPlaces.ts';

export type YamlPath = readonly (string | number)[];

/** A stretch of one line, counted from 1 in UTF-16 units. */
export interface YamlPlace {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

export interface YamlSource {
  readonly file: string;
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
  ) {
    super(`${place} ${code} ${text}`);
  }
}

/** Parses `text`; `file` is only used in messages. Throws `YamlError`. */
export function readYaml(file: string, text: string): YamlSource {
  const lines = new LineCounter();
  const where = (offset: number): string => {
    const { line, col } = lines.linePos(offset);
    return `${file}:${line}:${col}`;
  };
  const documents = parseAllDocuments(text, {
    version: '1.2',
    schema: 'core',
    uniqueKeys: true,
    strict: true,
    lineCounter: lines,
    prettyErrors: false,
  });
  if ('empty' in documents || documents.length === 0)
    throw new YamlError(`${file}:1:1`, 'empty', 'the file holds nothing');
  const document = documents[0] as Document.Parsed;
  const problem = document.errors[0] ?? document.warnings[0];
  if (problem) throw new YamlError(where(problem.pos[0]), codeOf(problem), problem.message);
  const second = documents[1];
  if (second) throw new YamlError(where(second.range[0]), 'second-document', 'one file holds one document');
  refuseWhatJsonCannotHold(document, where);
  const placeIn = placesIn(text, lines);
  return {
    file,
    data: document.toJS(),
    at: (path) => where(startOf(nodeAt(document, path))),
    atKey: (path) => where(startOf(keyAt(document, path))),
    placeOf: (path) => placeIn(nodeAt(document, path)),
    keyPlaceOf: (path) => placeIn(keyAt(document, path)),
    partOf: (path, part) => placeIn.part(document.getIn(path, true), part),
  };
}

/** The parser's own code in our form: `DUPLICATE_KEY` -> `duplicate-key`. */
const codeOf = (problem: { readonly code: string }): string =>
  problem.code.toLowerCase().replaceAll('_', '-');

function refuseWhatJsonCannotHold(document: Document.Parsed, where: (offset: number) => string): void {
  visit(document, {
    Pair(_, pair) {
      if (!isScalar(pair.key) || typeof pair.key.value !== 'string') {
        throw new YamlError(
          where(startOf(pair.key)),
          'key-not-text',
          'a key has to be text; put it in quotes',
        );
      }
      if (pair.key.value === '__proto__') {
        throw new YamlError(where(startOf(pair.key)), 'key-not-allowed', 'the key __proto__ cannot be used');
      }
    },
    Alias(_, node) {
      throw new YamlError(where(startOf(node)), 'alias', 'aliases are not followed; write the value out');
    },
    Scalar(key, node) {
      if (key !== 'key' && typeof node.value === 'number' && !Number.isFinite(node.value)) {
        throw new YamlError(where(startOf(node)), 'not-finite', `${node.source} is not a finite number`);
      }
    },
  });
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
