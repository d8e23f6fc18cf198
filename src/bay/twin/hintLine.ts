/** The slim line by the twin: what is in the hand and where it may go. It is a status, so it is also read out. */
export interface HintLine {
  readonly element: HTMLElement;
  say(text: string): void;
}

export function createHintLine(): HintLine {
  const element = document.createElement('p');
  element.className = 'bay-hint';
  element.setAttribute('role', 'status');
  let said = '';
  return {
    element,
    say(text) {
      if (text === said) return;
      said = text;
      element.textContent = text;
    },
  };
}
