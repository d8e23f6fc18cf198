/** What is wrong with a part file, and where: `message` is `file:line:column text`. */
export class PartError extends Error {
  override readonly name = 'PartError';

  constructor(place: string, text: string) {
    super(`${place} ${text}`);
  }
}

/** Throws a `PartError` for what stands at an offset of the file. */
export type Refuse = (offset: number, text: string) => never;

export function refuserOf(file: string, source: string): Refuse {
  return (offset, text) => {
    const before = source.slice(0, offset).split('\n');
    throw new PartError(`${file}:${before.length}:${(before.at(-1) as string).length + 1}`, text);
  };
}
