/** A cases file: one JSON object a line, keys as the options of `loop`; numbers and texts alike are taken as written. */
import type { LoopRun } from '../../plant/runLoop';
import { say } from '../../words/words';
import { UsageError } from '../verb';
import { CASE_KEYS, type LoopCase, readLoopCase } from './readLoopCase';

export interface PlacedCase {
  readonly given: LoopCase;
  readonly run: LoopRun;
}

/** All of them, or the first complaint with its file, line and column. A byte order mark is passed over. */
export function readCases(file: string, text: string): PlacedCase[] {
  const cases = text
    .replace(/^\uFEFF/, '')
    .split('\n')
    .map((line, i) => ({ line, place: `${file}:${i + 1}:1` }))
    .filter(({ line }) => line.trim() !== '')
    .map(({ line, place }) => {
      const given = readCase(line, place);
      return { given, run: runOf(given, place) };
    });
  if (cases.length === 0) throw new UsageError(say({ id: 'loop.noCases', values: { file } }));
  return cases;
}

function runOf(given: LoopCase, place: string): LoopRun {
  try {
    return readLoopCase(given);
  } catch (error) {
    if (error instanceof UsageError) throw new UsageError(`${place} ${error.message}`);
    throw error;
  }
}

function readCase(line: string, place: string): LoopCase {
  const data = parse(line, place);
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    throw new UsageError(say({ id: 'loop.notJson', values: { place, reason: line.slice(0, 40) } }));
  }
  const known: readonly string[] = CASE_KEYS;
  const out: Record<string, string | string[]> = {};
  for (const [key, value] of Object.entries(data)) {
    if (!known.includes(key)) {
      throw new UsageError(say({ id: 'loop.unknownKey', values: { place, key, known: known.join(', ') } }));
    }
    out[key] = key === 'fault' ? [value].flat().map(String) : String(value);
  }
  return out;
}

function parse(line: string, place: string): unknown {
  try {
    return JSON.parse(line);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new UsageError(say({ id: 'loop.notJson', values: { place, reason } }));
  }
}
