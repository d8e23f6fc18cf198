import { describe, expect, inject, test } from 'vitest';
import { enginesFound, openPage } from '../support/openPage';

describe('the built app, served by its own server', () => {
  test.each(enginesFound())('opens in %s without breaking a rule of the page', async (engine) => {
    const { page } = await openPage({ engine });
    await page.waitForFunction(() => (document.querySelector('#app')?.textContent ?? '').length > 0);
    expect(await page.title()).toContain('Portside');
  });

  test('keeps its policy in a header and in the page', async () => {
    const response = await fetch(inject('address'));
    expect(response.headers.get('content-security-policy')).toContain("default-src 'self'");
    expect(await response.text()).toContain('http-equiv="Content-Security-Policy"');
  });
});

/** Pages of a PDF as Chromium writes it. */
const pagesOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page(?!s)/g) ?? []).length;

describe('the car card', () => {
  test('and the conversion label print on one page each, A4 and Letter, and the sheet alone', {
    timeout: 60_000,
  }, async () => {
    const { page } = await openPage({ path: '?card=1' });
    await page.waitForSelector('.cc-card', { timeout: 30_000 });
    await page.getByLabel('Refrigerant on the label').selectOption('R-12');
    await page.getByLabel('Converted from R-12 to R-134a').check();
    await page.getByLabel('Where the car is').selectOption('united-states');
    await page.getByText('85 % of the R-12 charge').waitFor({ timeout: 30_000 });
    for (const format of ['A4', 'Letter']) expect(pagesOf(await page.pdf({ format }))).toBe(1);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.card-form').isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
    await page.getByRole('radio', { name: 'Conversion label' }).click();
    await page.waitForSelector('.cc-sticker');
    for (const format of ['A4', 'Letter']) expect(pagesOf(await page.pdf({ format }))).toBe(1);
  });

  test('says what is wrong with a number that has no unit, and shows no card for it', async () => {
    const { page } = await openPage({ path: '?card=1' });
    await page.getByLabel('Charge on the label').fill('800');
    await page.getByText('a number and a unit').waitFor();
    expect(await page.locator('.cc-card').count()).toBe(0);
  });
});

describe('the watch over a page', () => {
  test.each(enginesFound())(
    'sees in %s a script, an error and a request that should not be',
    async (engine) => {
      const { page, context, problems } = await openPage({ engine });
      await page.evaluate(() => {
        const script = document.createElement('script');
        script.textContent = 'window.smuggled = true';
        document.body.append(script);
        console.error('planted');
        setTimeout(() => {
          throw new Error('thrown');
        });
        return fetch('http://127.0.0.1:9/').catch(() => undefined);
      });
      await expect.poll(() => problems.join('\n')).toMatch(/script-src/);
      await expect.poll(() => problems.join('\n')).toMatch(/script: .*thrown/);
      expect(problems.join('\n')).toMatch(/planted/);
      expect(problems.join('\n')).toMatch(/connect-src/);
      await context.close();
      problems.length = 0;
    },
  );
});
