/** What a browser has to be asked: shapes in forced colours, what is spoken and how often, keys in a field, Esc, units. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { begin, debriefText, openSitting, runOn, write } from './driver';

const styleOf = (page: Page, selector: string, property: string): Promise<string> =>
  page
    .locator(selector)
    .first()
    .evaluate((element, name) => getComputedStyle(element).getPropertyValue(name), property);

test('in forced colours what is pressed, chosen or of one side keeps a shape', {
  timeout: 60_000,
}, async () => {
  const { page } = await openSitting({
    scenario: 'warm-at-the-lights',
    mode: 'practice',
    context: { forcedColors: 'active' },
  });
  await begin(page);
  await write(page, 'wear goggles');
  await page.locator('.txt [aria-pressed="true"]').waitFor();
  expect(await styleOf(page, '.txt .btn[aria-pressed="true"]', 'outline-style')).toBe('solid');
  expect(await styleOf(page, '.txt .btn[aria-pressed="false"]', 'outline-style')).toBe('none');
  expect(await styleOf(page, '.dec .btn.pri', 'border-top-width')).toBe('3px');
  const [chosen, other] = ['on', 'not(.on)'].map(
    (which) => `.txt .seg > ${which === 'on' ? '.on' : `:${which}`}`,
  );
  expect(await styleOf(page, chosen, 'background-color')).not.toBe(
    await styleOf(page, other, 'background-color'),
  );
  for (const [side, letter, corner, mark] of [
    ['low', 'L', '50%', 'circle'],
    ['high', 'H', '3px', 'rect'],
  ] as const) {
    expect(await page.locator(`.bdg.${side}`).first().textContent()).toBe(letter);
    expect(await styleOf(page, `.bdg.${side}`, 'border-top-left-radius')).toBe(corner);
    expect(await page.locator(`.ladder-pointer.${side} ${mark}`).count()).toBeGreaterThan(0);
  }
});

test('what is spoken comes at most every two seconds; a sign in a field tilts no can; Esc uncovers', {
  timeout: 60_000,
}, async () => {
  const { page } = await openSitting({ scenario: 'warm-at-the-lights', mode: 'practice' });
  await begin(page);
  await page.evaluate(() => {
    const spoken: number[] = [];
    Object.assign(window, { spoken });
    const status = document.querySelector('.cmd [role="status"]');
    if (status)
      new MutationObserver(() => spoken.push(performance.now())).observe(status, {
        characterData: true,
        childList: true,
        subtree: true,
      });
  });
  const bursts = [
    ['wear goggles', 'wear gloves', 'wear overall'],
    ['take-off gloves', 'door sideways', 'take-off goggles'],
  ];
  for (const burst of bursts) {
    for (const line of burst) await write(page, line);
    const last = burst.at(-1)?.split(' ')[1] ?? '';
    await expect
      .poll(() => page.locator('.cmd [role="status"]').textContent(), { timeout: 10_000 })
      .toContain(last);
  }
  const at = await page.evaluate(() => (window as unknown as { spoken: number[] }).spoken);
  expect(at.length).toBeGreaterThan(1);
  const between = at.slice(1).map((time, index) => time - at[index]);
  expect(Math.min(...between)).toBeGreaterThan(1900);

  await write(page, 'place can-1 hand');
  await page.getByRole('button', { name: 'Can 1' }).click();
  await page.locator('.form summary').click();
  const tilt = page.getByRole('slider', { name: 'Tilt', exact: true });
  const before = Number(await tilt.inputValue());
  await page.locator('.form input[type="number"]').press(']');
  await tilt.press(']');
  await expect.poll(async () => Number(await tilt.inputValue())).toBe(before + 5);

  await page.getByRole('button', { name: 'Gloves' }).focus();
  await page.keyboard.press('Escape');
  await page.waitForSelector('.form', { state: 'detached' });
});

/** The same short job; `changed` is asked in the menu on the way. */
async function played(changed: readonly string[]): Promise<readonly string[]> {
  const { page } = await openSitting({ scenario: 'warm-at-the-lights' });
  await begin(page);
  for (const line of ['wear goggles', 'door open', 'probe-air centre-vent', 'blower 4'])
    await write(page, line);
  if (changed.length > 0) {
    await page.getByRole('button', { name: 'Menu' }).click();
    for (const unit of changed) await page.getByRole('radio', { name: unit, exact: true }).click();
    await page.getByRole('button', { name: 'Back to where you were' }).click();
  }
  await runOn(page, '10 s');
  await write(page, 'note-reading air');
  if (changed.length > 0) await page.locator('.fnd', { hasText: '°F' }).first().waitFor();
  await write(page, 'decide do-not-charge');
  await page.getByRole('button', { name: 'Finish the job' }).click();
  await page.locator('.form').getByRole('button', { name: 'Finish the job' }).click();
  const told = ['log-hash', 'state-hash', 'score'] as const;
  const texts: string[] = [];
  for (const what of told) texts.push(await debriefText(page, what));
  return texts;
}

test('units changed in the middle of a job change neither its log, its state nor its score', {
  timeout: 180_000,
}, async () => {
  const plain = await played([]);
  expect(await played(['bar', '°F', 'oz'])).toEqual(plain);
});
