/** On which side of the bay a form stands that is about a thing there: the one the thing is not on, as the bay lies now. */
export type FormSide = 'side' | 'side left';

/** The twin's name of a can, whichever it is. */
const CAN = 'can';

export function formSide(id: string): FormSide {
  const target = id.startsWith('can-') ? CAN : id;
  const thing = document.querySelector(`.bay-twin [data-target="${CSS.escape(target)}"]`);
  const bay = document.querySelector('.bay-host');
  if (!thing || !bay) return 'side';
  return middleOf(thing) > middleOf(bay) ? 'side left' : 'side';
}

function middleOf(element: Element): number {
  const { left, width } = element.getBoundingClientRect();
  return left + width / 2;
}
