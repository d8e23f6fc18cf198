/** Hands the text to the browser's own saving. */
const FORGET_AFTER_MS = 10_000;

export function saveText(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/yaml' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), FORGET_AFTER_MS);
}
