/** A cases file: one JSON object a line, keys as the options of `loop`; numbers and texts alike are taken as written. */
import { say } from '../../words/words';
import { UsageError } from '../verb';
import { CASE_KEYS, type LoopCase } from './readLoopCase';

export function readCases(file: string, text: string): LoopCase[] {
  return text
    .split('\n')
    .map((line, i) => ({ line, place: `${file}:${i + 1}:1` }))
    .filter(({ line }) => line.trim() !== '')
    .map(({ line, place }) => readCase(line, place));
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
