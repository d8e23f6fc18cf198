/** Starts a stock Firefox, which wants a home that it may write to; whoever closes it takes the home away. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, firefox } from 'playwright-core';
import type { Browser as Found } from './findBrowser';

export async function launchFirefox({
  executablePath,
  env,
}: Found): Promise<{ readonly browser: Browser; readonly home: string }> {
  const home = mkdtempSync(join(tmpdir(), 'portside-firefox-'));
  try {
    const browser = await firefox.launch({
      executablePath,
      channel: 'moz-firefox',
      env: { ...process.env, ...env, HOME: home },
    });
    return { browser, home };
  } catch (error) {
    rmSync(home, { recursive: true, force: true });
    throw error;
  }
}

/** Why this one cannot be driven (another age than the driver's, say); null where it can. */
export async function whyNotDriven(found: Found): Promise<string | null> {
  try {
    const { browser, home } = await launchFirefox(found);
    await browser.close();
    rmSync(home, { recursive: true, force: true });
    return null;
  } catch (error) {
    return String(error instanceof Error ? error.message : error).split('\n')[0];
  }
}
