/** Once before the browser tests: builds the app, serves it as `npm start` does, finds the browsers. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { buildApp } from '../../shared/build/buildApp';
import { projectFolder } from '../../shared/build/folders';
import { serve } from '../../shared/build/server';
import { type Browser, chromiumSources, firefoxSources, firstThatAnswers } from './findBrowser';
import { whyNotDriven } from './launchFirefox';

declare module 'vitest' {
  interface ProvidedContext {
    /** Why there is nothing to open, where there is nothing; the other tests run all the same. */
    readonly noPage: string | null;
    /** Where the built app is served, with a slash at its end. */
    readonly address: string;
    /** Where it lies. */
    readonly folder: string;
    readonly chromium: Browser;
    readonly firefox: Browser | null;
  }
}

export async function setup(project: TestProject): Promise<() => Promise<void>> {
  try {
    const close = await prepare(project);
    project.provide('noPage', null);
    return close;
  } catch (error) {
    project.provide('noPage', error instanceof Error ? error.message : String(error));
    return async () => undefined;
  }
}

async function drivenFirefox(note: (line: string) => void): Promise<Browser | null> {
  const found = await firstThatAnswers(firefoxSources, note);
  const why = found ? await whyNotDriven(found) : 'there is none';
  if (found && why === null) {
    console.log(`firefox: ${found.version}`);
    return found;
  }
  console.log(`firefox: not run (${found ? `${found.version}: ` : ''}${why})`);
  return null;
}

async function prepare(project: TestProject): Promise<() => Promise<void>> {
  const notes: string[] = [];
  const note = (line: string): void => {
    notes.push(line);
  };
  const chromium = await firstThatAnswers(chromiumSources, note);
  if (!chromium) {
    throw new Error(`No browser for the browser tests. Set PORTSIDE_BROWSER to one.\n${notes.join('\n')}`);
  }
  console.log(`chromium: ${chromium.version} (${chromium.from})`);
  const firefox = await drivenFirefox(note);
  // a folder of its own: an app that is being served elsewhere is not pulled away from under its page
  const folder = join(projectFolder, `dist/tested-${process.pid}`);
  await buildApp(folder);
  const serving = await serve(folder, 0);
  project.provide('address', serving.address);
  project.provide('folder', folder);
  project.provide('chromium', chromium);
  project.provide('firefox', firefox);
  return async () => {
    await serving.close();
    rmSync(folder, { recursive: true, force: true });
  };
}
