import { describe, expect, inject, test } from 'vitest';
import { openPage } from '../support/openPage';

describe('the built app, served by its own server', () => {
  test('opens without a policy violation, a console error or a request off origin', async () => {
    const { page } = await openPage();
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
  test('sees an inline script, a console error and a request off origin', async () => {
    const { page, context, problems } = await openPage();
    await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.smuggled = true';
      document.body.append(script);
      console.error('planted');
      return fetch('http://127.0.0.1:9/').catch(() => undefined);
    });
    await expect.poll(() => problems.join('\n')).toMatch(/script-src/);
    expect(problems.join('\n')).toMatch(/planted/);
    expect(problems.join('\n')).toMatch(/connect-src/);
    await context.close();
    problems.length = 0;
  });
});
