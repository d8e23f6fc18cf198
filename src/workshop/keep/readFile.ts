/** A file that a person brings along, as text; or why it is none. */

/** Files that people write are smaller; `check` refuses more. */
export const MOST_BYTES = 262_144;

export type FileRead = { readonly text: string } | { readonly trouble: 'tooLarge' | 'notText' | 'empty' };

export async function readFile(file: Blob): Promise<FileRead> {
  if (file.size > MOST_BYTES) return { trouble: 'tooLarge' };
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    if (text.includes('\0')) return { trouble: 'notText' };
    return text.trim() === '' ? { trouble: 'empty' } : { text };
  } catch {
    return { trouble: 'notText' };
  }
}
