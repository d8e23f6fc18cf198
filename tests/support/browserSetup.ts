/** Once before the browser tests: builds the app, serves it as `npm start` does, finds the browsers. */
import type { TestProject } from 'vitest/node';
import { buildApp } from '../../shared/build/buildApp';
import { appFolder } from '../../shared/build/folders';
import { serve } from '../../shared/build/server';
import { type Browser, chromiumSources, firefoxSources, firstThatAnswers } from './findBrowser';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served, with a slash at its end. */
    readonly address: string;
    readonly chromium: Browser;
    readonly firefox: Browser | null;
  }
}

export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const notes: string[] = [];
  const note = (line: string): void => {
    notes.push(line);
  };
  const chromium = await firstThatAnswers(chromiumSources, note);
  if (!chromium) {
    throw new Error(`No browser for the browser tests. Set PORTSIDE_BROWSER to one.\n${notes.join('\n')}`);
  }
  console.log(`chromium: ${chromium.version} (${chromium.from})`);
  const firefox = await firstThatAnswers(firefoxSources, note);
  console.log(firefox ? `firefox: ${firefox.version}` : 'firefox: not run');
  await buildApp();
  const serving = await serve(appFolder, 0);
  project.provide('address', serving.address);
  project.provide('chromium', chromium);
  project.provide('firefox', firefox ?? null);
  return serving.close;
}
