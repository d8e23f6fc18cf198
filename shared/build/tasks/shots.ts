/**
 * `npm run shots [-- NAME...]`: pictures of every screen and every vehicle, in three sizes, light and dark, into `.shots/`,
 * which is kept out of the repository. A screen that lies behind others brings these along. For looking at, never for a test.
 */
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { enlargeText } from '../../../tests/support/enlargeText.ts';
import { chromiumSources, firstThatAnswers } from '../../../tests/support/findBrowser.ts';
import { buildApp } from '../buildApp.ts';
import { appFolder, projectFolder } from '../folders.ts';
import { serve } from '../server.ts';
import type { Scene } from '../shots/scene.ts';
import { scenes } from '../shots/scenes.ts';

/** In the first a screen is reached. */
const SIZES = [
  { width: 1366, height: 768 },
  { width: 1024, height: 600 },
  { width: 390, height: 844 },
] as const;
const LOOKS = ['light', 'dark'] as const;
const FOLDER = join(projectFolder, '.shots');

export async function run(args: string[]): Promise<number> {
  const unknown = args.find((name) => !scenes.some((scene) => namesOf(scene).includes(name)));
  if (unknown !== undefined) {
    console.error(`there is no screen "${unknown}"; there is ${scenes.flatMap(namesOf).join(', ')}`);
    return 2;
  }
  const found = await firstThatAnswers(chromiumSources, (line) => console.error(line));
  if (!found) {
    console.error('No browser to take pictures with. Set PORTSIDE_BROWSER to one.');
    return 1;
  }
  await buildApp();
  const serving = await serve(appFolder, 0);
  const { executablePath, env } = found;
  const browser = await chromium.launch({
    executablePath,
    args: ['--no-sandbox', ...found.args],
    env: { ...process.env, ...env } as Record<string, string>,
  });
  if (args.length === 0) rmSync(FOLDER, { recursive: true, force: true });
  mkdirSync(FOLDER, { recursive: true });
  let failures = 0;
  for (const scene of scenes)
    if (args.length === 0 || namesOf(scene).some((name) => args.includes(name)))
      failures += await take(browser, serving.address, scene);
  await browser.close();
  await serving.close();
  console.log(FOLDER);
  return failures > 0 ? 1 : 0;
}

const namesOf = ({ name, then = [] }: Scene): string[] => [name, ...then.map((further) => further.name)];

/** Every size and look of one screen and of those behind it; gives 1 where one could not be reached. */
async function take(browser: Browser, address: string, scene: Scene): Promise<number> {
  const context = await browser.newContext({ viewport: SIZES[0] });
  if (scene.settings) await context.addInitScript(keepSettings, scene.settings);
  const page = await context.newPage();
  if (scene.large) await enlargeText(page, 2);
  const looks = scene.lightOnly ? (['light'] as const) : LOOKS;
  let name = scene.name;
  try {
    await scene.reach(page, address);
    for (const look of looks) await inEachSize(page, name, look);
    for (const further of scene.then ?? []) {
      name = further.name;
      await page.setViewportSize(SIZES[0]);
      await further.reach(page);
      for (const look of looks) await inEachSize(page, name, look, further.shows);
    }
    return 0;
  } catch (error) {
    console.error(`${name}: ${error instanceof Error ? error.message : String(error)}`);
    return 1;
  } finally {
    await context.close();
  }
}

function keepSettings(wanted: NonNullable<Scene['settings']>): void {
  const kept = JSON.parse(localStorage.getItem('portside-settings') ?? '{}');
  localStorage.setItem('portside-settings', JSON.stringify({ ...kept, ...wanted }));
}

async function inEachSize(
  page: Page,
  name: string,
  look: (typeof LOOKS)[number],
  shows?: string,
): Promise<void> {
  await page.emulateMedia({ colorScheme: look });
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await page.waitForTimeout(1200);
    if (shows) await page.locator(shows).scrollIntoViewIfNeeded();
    const file = `${name}-${size.width}x${size.height}-${look}.png`;
    await page.screenshot({ path: join(FOLDER, file) });
    console.log(file);
  }
}
