import type { CDPSession, Page } from 'playwright-core';

/** What is set holds as long as its session does, so each page has one. */
const sessions = new WeakMap<Page, CDPSession>();

/** Chromium alone can be told. */
export const canEnlarge = (page: Page): boolean =>
  page.context().browser()?.browserType().name() === 'chromium';

/** The size of text as its reader has set it in the browser, so many times the usual. It stays until it is set anew. */
export async function enlargeText(page: Page, times: number): Promise<void> {
  const session = sessions.get(page) ?? (await page.context().newCDPSession(page));
  sessions.set(page, session);
  await session.send('Page.setFontSizes', { fontSizes: { standard: 16 * times, fixed: 13 * times } });
}
