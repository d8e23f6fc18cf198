/**
 * Two pairs of hands at the drawn page. Keys: everything is reached by F6, Tab and arrows from where focus stands, never
 * put into focus from outside. Fingers: everything is touched where it is seen.
 */
import type { Locator, Page } from 'playwright-core';

export interface Hands {
  readonly page: Page;
  /** Presses a button, a fold or a thing of the bay. */
  press(target: Locator): Promise<void>;
  /** Takes one of a few; on the way keys may take its neighbours. */
  choose(target: Locator): Promise<void>;
  tick(target: Locator): Promise<void>;
  /** Chooses the option of this number in a list. */
  pick(list: Locator, index: number): Promise<void>;
  write(field: Locator, text: string): Promise<void>;
  /** Brings a slider to a value; `less` and `more` are the buttons beside it. */
  slide(slider: Locator, value: number): Promise<void>;
  /** Closes the form that is open, if one is. */
  close(): Promise<void>;
}

const MOST_REGIONS = 10;
const MOST_TABS = 150;

export function keys(page: Page): Hands {
  const { keyboard } = page;
  /** Focus is on it, or on another of its radio group, where one Tab stop stands for all. */
  const isAt = (target: Locator): Promise<boolean> =>
    target.evaluate((element) => {
      const active = document.activeElement;
      if (element === active) return true;
      const isRadio = (one: Element | null): one is HTMLInputElement =>
        one instanceof HTMLInputElement && one.type === 'radio';
      if (isRadio(element) && isRadio(active) && element.name === active.name) return true;
      const group = element.closest('[role="radiogroup"], [role="menu"]');
      return group?.contains(active) ?? false;
    });
  const inRegion = (target: Locator): Promise<boolean> =>
    target.evaluate((element) => {
      const around = element.closest('[role="dialog"], [role="menu"], [data-region]');
      return around === null || around.contains(document.activeElement);
    });
  /** About how many Tabs lie between, backwards below nothing; whether they were enough is looked at after each that follows. */
  const tabsTo = (target: Locator): Promise<number> =>
    target.evaluate((element) => {
      const stops = [
        ...document.querySelectorAll<HTMLElement>('button, a[href], input, select, summary, [tabindex="0"]'),
      ].filter((one) => one.tabIndex >= 0 && one.checkVisibility());
      const at = stops.indexOf(element as HTMLElement);
      return at < 0 ? 0 : at - stops.indexOf(document.activeElement as HTMLElement);
    });
  const reach = async (target: Locator): Promise<void> => {
    await target.waitFor({ state: 'attached' });
    for (let region = 0; region < MOST_REGIONS && !(await inRegion(target)); region++)
      await keyboard.press('F6');
    if (await isAt(target)) return;
    const away = await tabsTo(target);
    for (let left = Math.abs(away) - (away < 0 ? 0 : 2); left > 0; left--)
      await keyboard.press(away < 0 ? 'Shift+Tab' : 'Tab');
    for (let tab = 0; tab < MOST_TABS; tab++) {
      if (await isAt(target)) return;
      await keyboard.press('Tab');
    }
    throw new Error(`no Tab leads to ${target}`);
  };
  const isFocused = (target: Locator): Promise<boolean> =>
    target.evaluate((element) => element === document.activeElement);
  const choose = async (target: Locator): Promise<void> => {
    await reach(target);
    for (let step = 0; step < MOST_REGIONS && !(await isFocused(target)); step++)
      await keyboard.press('ArrowDown');
    await keyboard.press('Enter');
  };
  return {
    page,
    choose,
    async press(target) {
      await reach(target);
      for (let step = 0; step < MOST_REGIONS && !(await isFocused(target)); step++)
        await keyboard.press('ArrowDown');
      await keyboard.press('Enter');
    },
    async tick(target) {
      await reach(target);
      for (let step = 0; step < MOST_TABS && !(await isFocused(target)); step++)
        await keyboard.press('ArrowDown');
      await keyboard.press('Space');
    },
    async pick(list, index) {
      await reach(list);
      await keyboard.press('Home');
      for (let step = 0; step < index; step++) await keyboard.press('ArrowDown');
    },
    async write(field, text) {
      await reach(field);
      await keyboard.press('ControlOrMeta+A');
      await keyboard.type(text);
      await keyboard.press('Tab');
    },
    async slide(slider, value) {
      await reach(slider);
      const now = async (): Promise<number> => Number(await slider.inputValue());
      if (value === Number(await slider.getAttribute('max'))) await keyboard.press('End');
      else if (value === Number(await slider.getAttribute('min'))) await keyboard.press('Home');
      for (let turn = 0; turn < MOST_TABS && (await now()) !== value; turn++)
        await keyboard.press((await now()) < value ? 'ArrowRight' : 'ArrowLeft');
    },
    async close() {
      const form = page.locator('.form');
      if ((await form.count()) === 0) return;
      await keyboard.press('Escape');
      await form.waitFor({ state: 'detached' });
    },
  };
}

/** Where it lies once the bay has taken the room that a form left. */
async function atRest(target: Locator): Promise<DOMRect> {
  return target.evaluate(async (element) => {
    const picture = (): Promise<number> => new Promise(requestAnimationFrame);
    const where = (): string => JSON.stringify(element.getBoundingClientRect());
    for (let before = ''; before !== where(); ) {
      before = where();
      for (let count = 0; count < 4; count++) await picture();
    }
    return element.getBoundingClientRect();
  });
}

export function fingers(page: Page): Hands {
  /** A thing of the bay is drawn; what stands over it lets the touch through. */
  const tap = async (target: Locator): Promise<void> => {
    await target.waitFor({ state: 'attached' });
    const isDrawn = await target.evaluate((element) => element.closest('.bay-twin') !== null);
    if (!isDrawn) return target.tap();
    const { x, y, width, height } = await atRest(target);
    await page.touchscreen.tap(x + width / 2, y + height / 2);
  };
  return {
    page,
    press: tap,
    choose: tap,
    tick: tap,
    async pick(list, index) {
      await list.tap();
      await list.selectOption({ index });
    },
    async write(field, text) {
      await field.tap();
      await field.fill(text);
      await field.evaluate((element) => (element as HTMLInputElement).blur());
    },
    async slide(slider, value) {
      const step = Number(await slider.getAttribute('step'));
      const buttons = slider.locator('xpath=..').locator('button');
      for (let turn = 0; turn < MOST_TABS; turn++) {
        const left = value - Number(await slider.inputValue());
        if (Math.abs(left) < step) return;
        await buttons.nth(left < 0 ? 0 : 1).tap();
      }
    },
    async close() {
      const form = page.locator('.form');
      if ((await form.count()) === 0) return;
      await form.locator('.fh .icb').first().tap();
      await form.waitFor({ state: 'detached' });
    },
  };
}
