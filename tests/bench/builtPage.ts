/** Chromium at the built app, for benches: what `work` measures with new pages of a school laptop's size, nothing kept. */
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { buildApp } from '../../shared/build/buildApp';
import { appFolder } from '../../shared/build/folders';
import { serve } from '../../shared/build/server';
import { chromiumSources, firstThatAnswers } from '../support/findBrowser';

export async function builtPage<Measured>(
  work: (newPage: () => Promise<Page>, address: string) => Promise<Measured>,
): Promise<Measured> {
  const found = await firstThatAnswers(chromiumSources, () => undefined);
  if (!found) throw new Error('no browser to measure with');
  await buildApp();
  const serving = await serve(appFolder, 0);
  const { chromium } = createRequire(join(appFolder, 'index.html'))('playwright-core');
  const browser: Browser = await chromium.launch({
    executablePath: found.executablePath,
    env: { ...process.env, ...found.env },
    args: ['--no-sandbox', '--disable-gpu', ...found.args],
  });
  try {
    return await work(() => browser.newPage({ viewport: { width: 1366, height: 768 } }), serving.address);
  } finally {
    await browser.close();
    await serving.close();
  }
}
