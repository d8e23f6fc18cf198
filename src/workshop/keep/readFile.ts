/** A file that a person brings along, as text; or why it is none. */
import { MOST_LETTERS } from './drafts';

export type FileRead = { readonly text: string } | { readonly trouble: 'tooLarge' | 'notText' };

export async function readFile(file: Blob): Promise<FileRead> {
  if (file.size > MOST_LETTERS) return { trouble: 'tooLarge' };
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    return text.includes('\0') ? { trouble: 'notText' } : { text };
  } catch {
    return { trouble: 'notText' };
  }
}
