/** The sign of a finding: a filled square with its letter for an error, a triangle with its letter for advice. */
import type { Problem } from '../../../shared/schema/problem';
import { word } from '../../words/words';

const SVG = 'http://www.w3.org/2000/svg';
const SHAPES = {
  error: 'M3 0h12a3 3 0 0 1 3 3v12a3 3 0 0 1-3 3H3a3 3 0 0 1-3-3V3a3 3 0 0 1 3-3z',
  warning: 'M9 1l8.4 16H.6z',
};
const LETTER_Y = { error: 13, warning: 15 };

const letterOf = (level: Problem['level']): string =>
  level === 'error' ? word('workshop.mark.errorLetter') : word('workshop.mark.adviceLetter');

export const levelName = (level: Problem['level']): string =>
  level === 'error' ? word('workshop.mark.error') : word('workshop.mark.advice');

export function markPicture(level: Problem['level']): SVGElement {
  const picture = document.createElementNS(SVG, 'svg');
  picture.setAttribute('class', `mk-${level}`);
  picture.setAttribute('viewBox', '0 0 18 18');
  picture.setAttribute('width', '16');
  picture.setAttribute('height', '16');
  picture.setAttribute('role', 'img');
  picture.setAttribute('aria-label', levelName(level));
  const shape = document.createElementNS(SVG, 'path');
  shape.setAttribute('d', SHAPES[level]);
  const letter = document.createElementNS(SVG, 'text');
  letter.setAttribute('x', '9');
  letter.setAttribute('y', String(LETTER_Y[level]));
  letter.setAttribute('text-anchor', 'middle');
  letter.textContent = letterOf(level);
  picture.append(shape, letter);
  return picture;
}
