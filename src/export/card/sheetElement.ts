/** The tree of a printed page as elements of a document. */
import type { Leaf } from './leaf';

export function sheetElement({ tag, kind, inside }: Leaf): HTMLElement {
  const element = document.createElement(tag);
  if (kind !== '') element.className = kind;
  element.append(...inside.map((part) => (typeof part === 'string' ? part : sheetElement(part))));
  return element;
}
