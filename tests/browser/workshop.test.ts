/**
 * An instructor at the workshop, who never wrote code: from a template to a scenario of one's own that was played and proved.
 * Then what holds for everyone: sizes, keys, other tabs, links, files that are none.
 */
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { DESK, expectClean } from '../support/cleanScreen';
import { cutOff } from '../support/cutOff';
import { openPage } from '../support/openPage';
import { begin } from './driver';

const context = { viewport: DESK, reducedMotion: 'reduce' } as const;
const PATH = '?workshop=1';

const textOf = (page: Page): Promise<string> =>
  page.evaluate(() => JSON.parse(localStorage.getItem('portside-workshop') ?? '{}').text ?? '');

/** Waits until what is kept says so: the text as the browser has it. */
const says = (page: Page, what: RegExp): Promise<void> =>
  expect.poll(() => textOf(page), { timeout: 15_000 }).toMatch(what);

async function beginWith(page: Page, template: string): Promise<void> {
  await page.getByRole('button', { name: template }).click();
  await page.getByText('No errors, no advice').waitFor({ timeout: 60_000 });
}

/** The template for the quickest walk: short plans. */
const TEMPLATE = 'One fault';

describe('an instructor', () => {
  test('goes from a template to a proved scenario without a line of code', { timeout: 600_000 }, async () => {
    const { page } = await openPage({ context });
    await page.getByRole('link', { name: 'Workshop' }).click();
    await beginWith(page, TEMPLATE);

    await page.getByLabel('Fault 1').selectOption({ label: 'radiator fan turning slowly' });
    await page
      .locator('.ws-form summary')
      .getByText('Changed along with it: the answer, the diagnosis in the solution.')
      .waitFor();
    await says(page, /fault: condenser-fan-slow/);
    await page.getByLabel('Fault 1').selectOption({ label: 'radiator fan not turning' });
    await says(page, /causes: \[condenser-fan-dead\]/);
    await page.getByLabel('Outside').fill('30');
    await page.getByLabel('Outside').press('Enter');
    await says(page, /temperature: 30 degC/);
    await page.getByRole('spinbutton', { name: /^Charge/ }).fill('470');
    await page.getByRole('spinbutton', { name: /^Charge/ }).press('Enter');
    await says(page, /charge: 470 g/);
    await page
      .getByLabel('What the owner complains of')
      .fill('At the lights it gets warm: moving, it is cold.');
    await page.getByLabel('What the owner complains of').blur();
    await says(page, /complaint: "At the lights it gets warm: moving, it is cold."/);

    // a slip in the text is marked on its line, and mended by its button
    await page.locator('.cm-line', { hasText: /^person:/ }).click();
    await page.keyboard.press('Home');
    await page.keyboard.press('Delete');
    const slip = page.locator('.ws-found li', { hasText: 'unknown key "erson"' });
    await slip.waitFor({ timeout: 15_000 });
    expect(await page.locator('.ed-signs svg').count()).toBeGreaterThan(0);
    await slip.getByRole('button', { name: 'Write person' }).click();
    await page.getByText('No errors, no advice').waitFor({ timeout: 15_000 });

    await says(page, /^person:/m);
    await page.reload();
    await page.getByText('No errors, no advice').waitFor({ timeout: 60_000 });
    expect(await page.getByRole('spinbutton', { name: /^Charge/ }).inputValue()).toBe('470');

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save file' }).click();
    const saved = await download;
    expect(saved.suggestedFilename()).toBe('one-fault.yaml');
    expect(await readFile(await saved.path(), 'utf8')).toBe(await textOf(page));

    await page.getByRole('button', { name: 'Play as trainee' }).click();
    await begin(page);
    await page.goBack();
    await page.getByRole('radio', { name: 'Proof' }).click();
    await page.getByRole('radio', { name: 'Quick' }).click();
    await page.getByRole('button', { name: 'Prove it' }).click();
    await page.locator('.wc-made [role="status"]').waitFor({ timeout: 420_000 });
  });

  test('works by keys alone: chooses, changes, jumps to a slip, mends it, and leaves the text with Tab', {
    timeout: 180_000,
  }, async () => {
    const { page } = await openPage({ path: PATH, context });
    const first = page.getByRole('button', { name: 'Nothing wrong' });
    await first.waitFor();
    for (let i = 0; i < 40 && !(await first.evaluate((one) => one === document.activeElement)); i++)
      await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.getByText('No errors, no advice').waitFor({ timeout: 60_000 });
    // the text has the focus: a slip in its last line, which a key goes to and another mends
    await page.keyboard.press('Control+End');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Home');
    await page.keyboard.press('Delete');
    await page.getByText('unknown key "asks"').waitFor({ timeout: 15_000 });
    await says(page, /^asks:/m);
    await page.keyboard.press('Control+Home');
    for (let i = 0; i < 4 && !/^tasks:/m.test(await textOf(page)); i++) {
      await page.keyboard.press('Alt+n');
      await expect.poll(() => page.locator('.ws-found li.here').count()).toBeGreaterThan(0);
      await page.keyboard.press('Alt+m');
      await page.waitForTimeout(1000);
    }
    await says(page, /^tasks:/m);
    await page.keyboard.press('Control+z');
    await says(page, /^asks:/m);
    await page.keyboard.press('Control+y');
    await says(page, /^tasks:/m);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('.ws-host') === null)).toBe(true);
  });

  test('is offered what could stand where the cursor is', { timeout: 120_000 }, async () => {
    const { page } = await openPage({ path: PATH, context });
    await beginWith(page, 'Nothing wrong');
    await page.locator('.cm-line', { hasText: /^faults:/ }).click();
    await page.keyboard.press('End');
    for (let i = 0; i < 'faults: []'.length; i++) await page.keyboard.press('Backspace');
    await page.keyboard.type('faults: [{ fault: clu');
    const offers = page.locator('.cm-tooltip-autocomplete li');
    await offers.first().waitFor();
    expect(await offers.allTextContents()).toContain('clutch-slippingclutch slipping');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('.ws-host') === null)).toBe(true);
  });
});

describe('what is written', () => {
  test('is not lost to another text, a link, another tab, or a file that is none', {
    timeout: 180_000,
  }, async () => {
    const { page, context: tabs } = await openPage({ path: PATH, context });
    const home = page.url().split('?')[0];
    await beginWith(page, 'Nothing wrong');
    const own = await textOf(page);
    await page.getByLabel('Scenario file').setInputFiles({
      name: 'a.yaml',
      mimeType: 'text/yaml',
      buffer: Buffer.from([0xff, 0xfe, 0x00]),
    });
    await page.getByText('no text in UTF-8').waitFor();
    expect(await textOf(page)).toBe(own);
    await page.getByRole('button', { name: 'Begin with…' }).click();
    await page.getByLabel('A scenario from the shelf').selectOption('from-twelve');
    await page.getByRole('button', { name: 'Begin with it' }).click();
    await says(page, /^id: from-twelve$/m);
    await page.getByRole('button', { name: 'Copy link' }).click();
    await page.getByText(/2000 are the most/).waitFor();
    await page.getByRole('button', { name: 'Begin with…' }).click();
    await page.getByRole('button', { name: 'The text that was here before' }).click();
    await expect.poll(() => textOf(page)).toBe(own);

    // a short text in a link asks first
    const link = await page.evaluate(async () => {
      const stream = new Blob(['title: Short\n']).stream().pipeThrough(new CompressionStream('deflate-raw'));
      const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
      return btoa(String.fromCharCode(...bytes))
        .replaceAll('+', '-')
        .replaceAll('/', '_')
        .replaceAll('=', '');
    });
    await page.evaluate((enclosed) => {
      location.hash = `enclosed=${enclosed}`;
    }, link);
    await page.getByText('A link has brought a text along: Short.').waitFor();
    expect(await textOf(page)).toBe(own);
    await page.getByRole('button', { name: 'Take the text of the link' }).click();
    await says(page, /^title: Short\n$/);
    expect(page.url()).not.toContain('enclosed');

    await page.getByRole('button', { name: 'Begin with…' }).click();
    await page.getByRole('button', { name: 'The text that was here before' }).click();
    await expect.poll(() => textOf(page)).toBe(own);

    const other = await tabs.newPage();
    await other.goto(`${home}${PATH}`);
    await other.getByRole('button', { name: 'Begin with…' }).click();
    await other.getByRole('button', { name: 'An empty page' }).click();
    await page.getByText('Another tab of this browser has kept a text of its own.').waitFor();
    await page.getByRole('button', { name: 'Keep this one' }).click();
    await expect.poll(() => textOf(page)).toBe(own);
  });
});

test('another language over a running proof takes neither it nor what can be undone, and Back closes the menu first', {
  timeout: 240_000,
}, async () => {
  const { page } = await openPage({ path: PATH, context });
  await beginWith(page, TEMPLATE);
  await page.getByLabel('Find a fault').fill('slip');
  expect(await page.locator('.ws-add optgroup option').allTextContents()).toEqual(['clutch slipping']);
  await page.getByLabel('Outside').fill('30');
  await page.getByLabel('Outside').press('Enter');
  await says(page, /temperature: 30 degC/);
  await page.getByRole('radio', { name: 'Proof' }).click();
  await page.getByRole('button', { name: 'Prove it' }).click();
  await page.getByText(/^\d+ of at most \d+ parts are done/).waitFor({ timeout: 90_000 });
  await page.getByRole('button', { name: 'Menu' }).click();
  await page.getByRole('radio', { name: 'Español' }).click();
  await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe('es');
  await page.goBack();
  await page.getByText(/^\d+ de \d+ partes/).waitFor();
  expect(page.url()).toContain(PATH);
  await page.getByText('Sin errores ni consejos').waitFor({ timeout: 60_000 });
  await page.locator('.cm-content').click();
  await page.keyboard.press('Control+z');
  await says(page, /temperature: 31 degC/);
  await page.goBack();
  await expect.poll(() => page.url()).not.toContain(PATH);
});

test('the form works from an empty page, and leaves the text room on a low screen', {
  timeout: 120_000,
}, async () => {
  const { page } = await openPage({
    path: PATH,
    context: { ...context, viewport: { width: 1024, height: 600 } },
  });
  await page.getByRole('button', { name: 'An empty page' }).click();
  await page.locator('.ws-form summary').click();
  await page.locator('.ws-f.car select').selectOption({ index: 2 }, { timeout: 60_000 });
  await says(page, /^vehicle: .*\ncontents:\n {2}refrigerant: .*\n {2}charge: \d+ g\n/m);
  for (const [name, value, written] of [
    ['Outside', '29', /^weather:\n {2}temperature: 29 degC$/m],
    ['Humidity', '50', /^ {2}humidity: 50%$/m],
    ['Charge', '480', /^ {2}charge: 480 g$/m],
  ] as const) {
    const box = page.getByRole('spinbutton', { name: new RegExp(`^${name}`) });
    await box.fill(value);
    await box.press('Enter');
    await says(page, written);
  }
  expect(await textOf(page)).not.toContain('person');
  // a box shows what the text says, and nothing where it says nothing
  await page.getByLabel('Scenario file').setInputFiles({
    name: 'own.yaml',
    mimeType: 'text/yaml',
    buffer: Buffer.from('schema: 1\nweather: fine\n'),
  });
  const box = page.getByRole('spinbutton', { name: /^Outside/ });
  await expect.poll(() => box.inputValue()).toBe('');
  await box.fill('29');
  await box.press('Enter');
  await page.locator('.ws-form summary').getByText('The text has no place for this').waitFor();
  expect(await box.inputValue()).toBe('');

  const complaint = page.getByLabel('What the owner complains of');
  await complaint.fill('Moving, it is cold. As soon as I stand in a queue it turns warm. '.repeat(3));
  expect(await complaint.evaluate((area) => area.scrollHeight <= area.clientHeight + 1)).toBe(true);

  const height = (selector: string): Promise<number> =>
    page.locator(selector).evaluate((element) => element.getBoundingClientRect().height);
  expect(await page.locator('.ws-found li').count()).toBe(0);
  expect(await height('.ws-found')).toBeLessThan(48);
  expect(await height('.ws-frame')).toBeGreaterThan(180);
  await page.getByRole('button', { name: 'Show all' }).click();
  expect(await page.locator('.ws-found li').count()).toBeGreaterThan(15);
  expect(await page.evaluate(() => document.documentElement.scrollHeight <= innerHeight + 1)).toBe(true);
});

test('the workshop is clean at every size and whole in Spanish', { timeout: 300_000 }, async () => {
  const { page } = await openPage({ path: PATH, context });
  await page.locator('.ws-starts').waitFor();
  await expectClean(page, 'workshop, start', 'screen');
  await beginWith(page, TEMPLATE);
  await page.locator('.cm-line', { hasText: /^person:/ }).click();
  await page.keyboard.press('Home');
  await page.keyboard.press('Delete');
  await page.locator('.ws-found li').first().waitFor();
  await expectClean(page, 'workshop, text with slips', 'screen');
  for (const theme of ['dark', 'projector']) {
    await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme);
    await expectClean(page, `workshop, ${theme}`);
  }
  const spanish = await openPage({ path: PATH, context: { ...context, locale: 'es-ES' } });
  await spanish.page.getByRole('button', { name: 'Un fallo' }).click();
  await spanish.page.getByText('Sin errores ni consejos').waitFor({ timeout: 60_000 });
  await says(spanish.page, /^# PLANTILLA: .*\ntitle: Bien hasta que se para\n/s);
  for (const viewport of [DESK, { width: 1024, height: 600 }, { width: 390, height: 844 }]) {
    await spanish.page.setViewportSize(viewport);
    expect(await spanish.page.evaluate(cutOff), `${viewport.width}`).toEqual([]);
  }
});
