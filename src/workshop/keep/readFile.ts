/** A file that a person brings along, as text; or why it is none. */

/** Files that people write are smaller; `check` refuses more. */
export const MOST_BYTES = 262_144;

export type FileRead = { readonly text: string } | { readonly trouble: 'tooLarge' | 'notText' };

export async function readFile(file: Blob): Promise<FileRead> {
  if (file.size > MOST_BYTES) return { trouble: 'tooLarge' };
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    return text.includes('\0') ? { trouble: 'notText' } : { text };
  } catch {
    return { trouble: 'notText' };
  }
}
