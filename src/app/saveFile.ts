/** Hands a text file to the browser's own saving. */
const FORGET_AFTER_MS = 10_000;

export function saveFile(name: string, text: string, type = 'application/json'): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), FORGET_AFTER_MS);
}
