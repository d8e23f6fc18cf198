/** Ways on the drawn page: which button opens which form, and what stands in it, by the words that stand on them. */
import type { Locator } from 'playwright-core';
import { hoseName } from '../../../src/panels/portWords';
import { say, type WordId, word } from '../../../src/words/words';
import type { Hands } from './hands';

export const said = (id: string): string => say({ id: id as WordId });
export const named = (hands: Hands, name: string): Locator =>
  hands.page.getByRole('button', { name, exact: true }).first();
export const inForm = (hands: Hands, name: string | RegExp): Locator =>
  hands.page.locator('.form').getByRole('button', { name }).first();
export const tool = (hands: Hands, name: string): Locator =>
  hands.page
    .locator('.tool')
    .filter({ has: hands.page.locator('.nm', { hasText: new RegExp(`^${name}$`) }) });
export const thing = (hands: Hands, id: string): Locator =>
  hands.page.locator(`.bay-twin [data-target="${id}"]`).first();

export async function openTool(hands: Hands, name: string): Promise<void> {
  if ((await tool(hands, name).getAttribute('aria-pressed')) === 'true') return;
  await hands.close();
  await hands.press(tool(hands, name));
  await hands.page.waitForSelector('.form');
}

/** A form, opened by this button unless it stands open already. */
export async function open(hands: Hands, title: string, opener: Locator): Promise<void> {
  if ((await hands.page.getByRole('dialog', { name: title, exact: true }).count()) > 0) return;
  await hands.close();
  await hands.press(opener);
  await hands.page.getByRole('dialog', { name: title, exact: true }).waitFor();
}

export const openCar = (hands: Hands): Promise<void> =>
  open(hands, word('panels.car.title'), hands.page.locator('.ctl .btn').first());

export async function inCar(hands: Hands, group: string, name: string): Promise<void> {
  await openCar(hands);
  const row = hands.page.locator('.form').getByRole('radiogroup', { name: group, exact: true });
  await hands.choose(row.getByRole('radio', { name, exact: true }));
}

/** The form of a port, by the name an assessed trainee reads; it stays open while more is done there. */
export async function atPort(hands: Hands, port: string, name: string): Promise<void> {
  const form = hands.page.getByRole('dialog', { name });
  if ((await form.count()) > 0) return;
  await hands.close();
  await hands.press(thing(hands, port));
  await form.waitFor();
}

export async function entries(hands: Hands, stage: string): Promise<void> {
  await open(hands, word('task.entries.title'), named(hands, word('task.entries.open')));
  const fold = hands.page
    .locator('.form details')
    .filter({ has: hands.page.locator('summary', { hasText: stage }) });
  if ((await fold.getAttribute('open')) === null) await hands.press(fold.locator('summary'));
}

export const gaugeSet = (hands: Hands): Promise<void> => openTool(hands, word('work.bench.gaugeSet'));
export const hoseRows = (hands: Hands, hose: string): Locator =>
  hands.page
    .locator('.form fieldset')
    .filter({ has: hands.page.locator('legend', { hasText: hoseName(hose) }) });
export const toolOfHose = (hands: Hands, hose: string): Promise<void> =>
  hose === 'charging' ? openTool(hands, word('work.bench.charging')) : gaugeSet(hands);
export const openCan = (hands: Hands, can: string): Promise<void> =>
  openTool(hands, word('work.bench.can', { number: can.split('-')[1] }));
export const slider = (hands: Hands, name: string): Locator =>
  hands.page.locator('.form').getByRole('slider', { name, exact: true });

export async function search(hands: Hands, place: string, press: string): Promise<void> {
  const list = hands.page.locator('.form select').first();
  const ids = await list
    .locator('option')
    .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
  await hands.pick(list, ids.indexOf(place));
  await hands.press(inForm(hands, press));
}
