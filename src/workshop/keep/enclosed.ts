/**
 * A short text enclosed in a link, behind the `#`: it never leaves the machine of whoever opens it. Deflated without a header
 * (RFC 1951), written in the URL alphabet of base 64 (RFC 4648). What comes out of it is counted while it grows, so that a
 * few letters cannot become a flood.
 */
import { fromTemplate, templateIn, toldByTemplate } from './byTemplate';
import { MOST_BYTES } from './readFile';

export const MOST_LINK_LETTERS = 2000;
const KEY = 'enclosed';

/** Templates by id, as they are written. */
export interface Templates {
  readonly ids: readonly string[];
  text(id: string): Promise<string>;
}

/** Longer texts come to no link, so nobody asks which template is nearest to them. */
const MOST_COMPARED = 40_000;

/** What follows the address of the workshop; the shortest there is. */
export async function enclose(text: string, templates: Templates): Promise<string> {
  const ids = text.length > MOST_COMPARED ? [] : templates.ids;
  const told = await Promise.all(ids.map(async (id) => toldByTemplate(text, id, await templates.text(id))));
  const letters = await Promise.all([text, ...told].map(deflated));
  return `#${KEY}=${letters.sort((a, b) => a.length - b.length)[0]}`;
}

async function deflated(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  return lettersOf(await through(bytes, new CompressionStream('deflate-raw'), Number.POSITIVE_INFINITY));
}

/** Whether a link brings a text along. */
export const isEnclosing = (hash: string): boolean => hash.startsWith(`#${KEY}=`);

/** Null where nothing is enclosed, or nothing that could be a text of ours. */
export async function disclose(hash: string, templates: Templates): Promise<string | null> {
  if (!isEnclosing(hash) || hash.length > MOST_LINK_LETTERS) return null;
  try {
    const bytes = bytesOf(hash.slice(KEY.length + 2));
    const inflated = await through(bytes, new DecompressionStream('deflate-raw'), MOST_BYTES);
    const told = new TextDecoder('utf-8', { fatal: true }).decode(inflated);
    if (told.includes('\0')) return null;
    const id = templateIn(told);
    if (id === null) return told;
    const text = templates.ids.includes(id) ? fromTemplate(told, await templates.text(id)) : null;
    return text !== null && text.length <= MOST_BYTES ? text : null;
  } catch {
    return null;
  }
}

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  change: CompressionStream | DecompressionStream,
  mostBytes: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const reader = new Blob([bytes]).stream().pipeThrough(change).getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let count = 0;
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    count += read.value.length;
    if (count > mostBytes) {
      await reader.cancel();
      throw new RangeError(`more than ${mostBytes} bytes`);
    }
    parts.push(read.value);
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

const lettersOf = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');

const bytesOf = (letters: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(letters.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));
