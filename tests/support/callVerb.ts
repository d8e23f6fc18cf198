/** A verb of the command line called as a shell would, with files held in memory. */
import { dispatch } from '../../src/cli/dispatch';
import { type Io, processIo, toJson } from '../../src/cli/io';
import type { Verb } from '../../src/cli/verb';

interface Called {
  readonly code: number;
  readonly out: string;
  readonly notes: string;
  readonly files: ReadonlyMap<string, string>;
}

export async function callVerb(
  verbs: readonly Verb[],
  args: readonly string[],
  files: Record<string, string> = {},
  input = '',
): Promise<Called> {
  const held = new Map(Object.entries(files));
  let out = '';
  let notes = '';
  const io: Io = {
    ...processIo,
    json: (value) => {
      out += `${toJson(value, 2)}\n`;
    },
    line: (value) => {
      out += `${toJson(value, 0)}\n`;
    },
    text: (text) => {
      out += text;
    },
    note: (text) => {
      notes += `${text}\n`;
    },
    async *inputLines() {
      yield* input.split('\n');
    },
    readFile: (file) => held.get(file) ?? processIo.readFile(file),
    writeFile: (file, content) => {
      held.set(file, String(content));
    },
  };
  const code = await dispatch(verbs, args, io);
  return { code, out, notes, files: held };
}
