/** The tree of a printed page as elements of a document. */
import { classesOf, type Leaf } from './leaf';

export function sheetElement(part: Leaf): HTMLElement {
  const element = document.createElement(part.tag);
  if (part.kind !== '') element.className = classesOf(part);
  element.append(...part.inside.map((one) => (typeof one === 'string' ? one : sheetElement(one))));
  return element;
}
