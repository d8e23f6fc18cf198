/**
 * Reads one YAML document (version 1.2, core schema) and keeps the position of every node, so that whoever checks the
 * data can say file, line and column. Used when the project is built and when a foreign file is opened.
 *
 * Refused: a key twice, an unknown tag, more than one document, a number JSON cannot hold, the key `__proto__`.
 */
import { type Document, isMap, isNode, isPair, isScalar, LineCounter, parseAllDocuments, visit } from 'yaml';

export type YamlPath = readonly (string | number)[];

export interface YamlSource {
  readonly data: unknown;
  /** `file:line:column` of the node at `path`, or of its nearest ancestor that exists. */
  readonly at: (path: YamlPath) => string;
  /** As `at`, but of the key itself; for "unknown key". */
  readonly atKey: (path: YamlPath) => string;
}

/** `message` starts with `file:line:column` and goes on with what was wrong. */
export class YamlError extends Error {
  override readonly name = 'YamlError';
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
  if ('empty' in documents || documents.length === 0) throw new YamlError(`${file}:1:1 the file is empty`);
  const document = documents[0] as Document.Parsed;
  const problem = document.errors[0] ?? document.warnings[0];
  if (problem) throw new YamlError(`${where(problem.pos[0])} ${problem.message}`);
  const second = documents[1];
  if (second) throw new YamlError(`${where(second.range[0])} a second document; one file holds one`);
  refuseWhatJsonCannotHold(document, where);
  return {
    data: document.toJS({ maxAliasCount: 100 }),
    at: (path) => where(offsetOf(document, path)),
    atKey: (path) => where(keyOffsetOf(document, path)),
  };
}

function refuseWhatJsonCannotHold(document: Document.Parsed, where: (offset: number) => string): void {
  visit(document, {
    Pair(_, pair) {
      if (!isScalar(pair.key) || typeof pair.key.value !== 'string') {
        throw new YamlError(`${where(startOf(pair.key))} a key has to be text; put it in quotes`);
      }
      if (pair.key.value === '__proto__') {
        throw new YamlError(`${where(startOf(pair.key))} the key __proto__ cannot be used`);
      }
    },
    Scalar(key, node) {
      if (key !== 'key' && typeof node.value === 'number' && !Number.isFinite(node.value)) {
        throw new YamlError(`${where(startOf(node))} ${node.source} is not a finite number`);
      }
    },
  });
}

function offsetOf(document: Document.Parsed, path: YamlPath): number {
  for (let depth = path.length; depth > 0; depth--) {
    const node = document.getIn(path.slice(0, depth), true);
    if (isNode(node) && node.range) return node.range[0];
  }
  return startOf(document.contents);
}

function keyOffsetOf(document: Document.Parsed, path: YamlPath): number {
  const parent = path.length > 1 ? document.getIn(path.slice(0, -1), true) : document.contents;
  const key = path[path.length - 1];
  if (isMap(parent)) {
    const pair = parent.items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === key);
    if (pair) return startOf(pair.key);
  }
  return offsetOf(document, path);
}

function startOf(node: unknown): number {
  return isNode(node) && node.range ? node.range[0] : 0;
}
