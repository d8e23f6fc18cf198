/** What is written into this browser at once, and whether it ever refused to keep something. */
import { createSignal } from 'solid-js';

const [storageRefused, setStorageRefused] = createSignal(false);

export { storageRefused };

export const tellRefused = (): void => void setStorageRefused(true);

/** True where it could be kept. */
export function keepText(key: string, text: string): boolean {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    tellRefused();
    return false;
  }
}
