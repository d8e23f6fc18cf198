/**
 * Presses whatever can be pressed on the work screen in words: every tool, part, port and form, every fold, button, radio,
 * box and slider in it. Runs inside the page, on the DOM alone. `listenToCommands` goes in before the page's own script.
 */

/** A command as the page sent it, and the control it was sent by. */
export interface Door {
  readonly command: string;
  readonly role: string;
  readonly name: string;
}

interface Listening {
  readonly doors: Door[];
  /** The control that is being pressed. */
  at: { readonly role: string; readonly name: string } | null;
  /** Commands that the core has not answered yet. */
  unanswered: number;
}

declare global {
  interface Window {
    heardDoors: Listening;
  }
}

/** Writes down each command that goes to the worker. */
export function listenToCommands(): void {
  const listening: Listening = { doors: [], at: null, unanswered: 0 };
  window.heardDoors = listening;
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (this: Worker, message, ...rest: unknown[]) {
    if (message?.type === 'command') {
      listening.unanswered++;
      const { role, name } = listening.at ?? { role: '', name: '' };
      listening.doors.push({ command: message.command.do, role, name });
    }
    return Reflect.apply(post, this, [message, ...rest]);
  };
  const listen = Worker.prototype.addEventListener;
  const handler = Object.getOwnPropertyDescriptor(Worker.prototype, 'onmessage');
  Object.defineProperty(Worker.prototype, 'onmessage', {
    ...handler,
    set(this: Worker, hear) {
      handler?.set?.call(this, hear);
      Reflect.apply(listen, this, [
        'message',
        ({ data }: MessageEvent) => {
          if (data?.type === 'outcome') listening.unanswered--;
        },
      ]);
    },
  });
}

/**
 * What was sent by which control stands in `window.heardDoors`. `from`: how the names of what is pressed on the screen begin,
 * nothing for all of it; the way out of the job is taken only where it is named.
 */
export async function pressEveryDoor(from: readonly string[]): Promise<void> {
  const PRESSED = 'button, summary, input, select';
  const MOST_PRESSES = 90;
  const PICTURES = 5;
  const listening = window.heardDoors;
  const isSeen = (element: Element): boolean => element.checkVisibility({ visibilityProperty: true });
  const roleOf = (element: Element): string =>
    element.getAttribute('role') ??
    (element instanceof HTMLInputElement ? element.type : element.tagName.toLowerCase());
  const nameOf = (element: Element): string =>
    (
      element.getAttribute('aria-label') ??
      (element instanceof HTMLInputElement || element instanceof HTMLSelectElement
        ? (element.labels?.[0]?.textContent ?? '')
        : (element.textContent ?? ''))
    ).trim();
  /** What came of a command is on the page some pictures after its answer. */
  const rest = async (): Promise<void> => {
    const isAsked = listening.unanswered > 0;
    do await new Promise((resolve) => setTimeout(resolve, 4));
    while (listening.unanswered > 0);
    for (let picture = 0; isAsked && picture < PICTURES; picture++) await new Promise(requestAnimationFrame);
  };
  const act = (element: HTMLElement): void => {
    if (element instanceof HTMLInputElement && element.type === 'range') {
      if (element.value === element.max) element.stepDown();
      else element.stepUp();
      element.dispatchEvent(new Event('change', { bubbles: true }));
    } else if (element instanceof HTMLInputElement && element.type === 'number') {
      element.stepUp(20);
      element.dispatchEvent(new Event('change', { bubbles: true }));
    } else if (element.tagName !== 'SELECT') element.click();
  };
  /** A caution in the way is answered by going on, a stop by going back. */
  const answer = async (): Promise<void> => {
    for (let turn = 0; turn < 6; turn++) {
      const plate = document.querySelector('[role="alertdialog"]');
      if (!plate) return;
      const isStop = plate.querySelector('.pri') !== null;
      const [first, second] = plate.querySelectorAll<HTMLElement>('button');
      await press(isStop ? first : second);
    }
  };
  const press = async (element: HTMLElement): Promise<void> => {
    listening.at = { role: roleOf(element), name: nameOf(element) };
    act(element);
    await rest();
    listening.at = null;
  };
  /** What is the same wherever it stands: group, role and name. */
  const keyOf = (element: Element): string => {
    const group = element.closest('[role="radiogroup"]')?.getAttribute('aria-label');
    const legend = element.closest('fieldset')?.querySelector('legend')?.textContent;
    const isPressed = element.matches('.chip') ? null : element.ariaPressed;
    return [legend, group, roleOf(element), nameOf(element), isPressed].join('|');
  };
  /** What shuts a form; and of many alike beside each other two are enough. */
  const isLeft = (element: Element): boolean =>
    element.matches('.icb, .pick > :nth-child(n + 3), .rad > :nth-child(n + 3) input');
  const atThings = new Set<string>();
  /** Everything in a box that has not been pressed; what ends or leaves comes last. */
  const pressAll = async (find: () => Element | null, done: Set<string>): Promise<void> => {
    for (let count = 0; count < MOST_PRESSES; count++) {
      const box = find();
      if (!box) return;
      for (const fold of box.querySelectorAll('[open] > summary')) done.add(keyOf(fold));
      const here = [...box.querySelectorAll<HTMLElement>(PRESSED)].filter(
        (one) => isSeen(one) && !isLeft(one) && !done.has(keyOf(one)),
      );
      const inBody = here.filter((one) => one.closest('.ff') === null);
      const next = inBody[0] ?? here.at(-1);
      if (!next) return;
      done.add(keyOf(next));
      await press(next);
      await answer();
    }
  };
  const form = (): Element | null => document.querySelector('[role="dialog"]');
  const leave = async (): Promise<void> => {
    form()
      ?.querySelector('button')
      ?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape', bubbles: true }));
    await rest();
  };
  const openers = (): HTMLElement[] =>
    [...document.querySelectorAll<HTMLElement>('.txt button, .txt summary, .txt input, .dec button')].filter(
      (one) => isSeen(one) && !isLeft(one) && !one.matches('.cmd *, [open] > summary'),
    );
  const gone = new Set<string>();
  const isWanted = (one: HTMLElement): boolean =>
    from.length === 0 ? !one.matches('.dec .pri') : from.some((name) => nameOf(one).startsWith(name));
  /** Tools come before the things of the bay, where hoses come off; then the car's own controls; the way out is last. */
  const LATER = ['.linkb', '.setr *', '.dec .pri'];
  const rankOf = (one: HTMLElement): number => LATER.findIndex((where) => one.matches(where));
  const nextOpener = (): HTMLElement | undefined =>
    openers()
      .filter((one) => isWanted(one) && !gone.has(keyOf(one)))
      .sort((one, other) => rankOf(one) - rankOf(other))[0];
  for (let next = nextOpener(); next; next = nextOpener()) {
    gone.add(keyOf(next));
    const isThing = next.matches('.linkb');
    await press(next);
    await answer();
    await pressAll(form, isThing ? atThings : new Set());
    await leave();
  }
}
