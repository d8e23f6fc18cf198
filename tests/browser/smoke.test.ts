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
