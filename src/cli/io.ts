/** What a verb may do to the world: write its answer, say a note, read and write the files it was given. */
import { readFileSync, writeFileSync } from 'node:fs';
import { say } from '../words/words';
import { UsageError } from './verb';

export interface Io {
  /** The answer: one JSON value, indented. */
  readonly json: (value: unknown) => void;
  /** One JSON value on a line of its own; for answers that are a list of records. */
  readonly line: (value: unknown) => void;
  /** The answer where it is no JSON (CSV, the text twin); written as it is. */
  readonly text: (text: string) => void;
  /** For the person, on the error stream; a line. */
  readonly note: (text: string) => void;
  /** All of standard input. */
  readonly input: () => string;
  /** Lines of standard input as they arrive. */
  readonly inputLines: () => AsyncIterable<string>;
  readonly readFile: (file: string) => string;
  readonly writeFile: (file: string, content: string | Uint8Array) => void;
}

const STANDARD_INPUT = 0;

export const processIo: Io = {
  json: (value) => write(`${toJson(value, 2)}\n`),
  line: (value) => write(`${toJson(value, 0)}\n`),
  text: write,
  note: (text) => {
    process.stderr.write(`${text}\n`);
  },
  input: () => readFileSync(STANDARD_INPUT, 'utf8'),
  inputLines,
  readFile: (file) => {
    try {
      return readFileSync(file, 'utf8');
    } catch (error) {
      throw new UsageError(say({ id: 'cli.cannotRead', values: { file, reason: reasonOf(error) } }));
    }
  },
  writeFile: (file, content) => {
    try {
      writeFileSync(file, content);
    } catch (error) {
      throw new UsageError(say({ id: 'cli.cannotWrite', values: { file, reason: reasonOf(error) } }));
    }
  },
};

function write(text: string): void {
  process.stdout.write(text);
}

async function* inputLines(): AsyncIterable<string> {
  const { createInterface } = await import('node:readline');
  yield* createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
}

/** JSON turns NaN and infinity into null without a word; an answer that holds one is a fault of ours. */
export function toJson(value: unknown, indent: number): string {
  return JSON.stringify(
    value,
    (key, part: unknown) => {
      if (typeof part === 'number' && !Number.isFinite(part))
        throw new Error(`"${key}" is ${part}, which JSON cannot hold`);
      return part;
    },
    indent,
  );
}

function reasonOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}
