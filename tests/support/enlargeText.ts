import type { Page } from 'playwright-core';

/** Chromium alone can be told. */
export const canEnlarge = (page: Page): boolean =>
  page.context().browser()?.browserType().name() === 'chromium';

/** The size of text as its reader has set it in the browser, so many times the usual. It stays until it is set anew. */
export async function enlargeText(page: Page, times: number): Promise<void> {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Page.setFontSizes', { fontSizes: { standard: 16 * times, fixed: 13 * times } });
}
