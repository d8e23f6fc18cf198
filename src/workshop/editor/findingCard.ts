/** One finding as it shows over the text: its sign, its code, what is wrong, and a button where one thing can be meant. */
import { word } from '../../words/words';
import { markPicture } from './markPicture';
import type { Mark } from './marks';

export const mendName = ({ insert }: NonNullable<Mark['fix']>): string =>
  insert.trim() === '' ? word('workshop.mark.takeOut') : word('workshop.mark.mend', { text: insert.trim() });

export function findingCard(mark: Mark, onMend: () => void): HTMLElement {
  const card = document.createElement('div');
  card.className = 'ed-card';
  const says = document.createElement('p');
  const code = document.createElement('b');
  code.textContent = mark.code;
  says.append(markPicture(mark.level), code, ` ${mark.message}`);
  card.append(says);
  if (mark.fix) {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = mendName(mark.fix);
    button.addEventListener('click', onMend);
    card.append(button);
  }
  return card;
}
