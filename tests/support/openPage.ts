/**
 * A page of the built app in a real browser: `const { page } = await openPage({ path: '?scenario=x' })`. At the end of the
 * test the page is closed, and the test fails on anything the page should not have done: a violation of the content
 * security policy, an error on its console or in its script, a request off its origin.
 */
import { rmSync } from 'node:fs';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { afterAll, expect, inject, onTestFinished } from 'vitest';
import type { Browser as Found } from './findBrowser';
import { launchFirefox } from './launchFirefox';

/** Keeps Chromium off the network and out of first-run pages. */
const QUIET = [
  '--no-sandbox',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface Opening {
  /** Behind the address: `''` is the app itself. */
  readonly path?: string;
  readonly engine?: Engine;
  readonly context?: BrowserContextOptions;
}

export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the page did that it should not have; checked when the test ends. */
  readonly problems: string[];
}

export type Engine = 'chromium' | 'firefox';

/** What a test can run in here: Chromium, and Firefox where this machine has one. For `test.each(enginesFound())`. */
export function enginesFound(): Engine[] {
  const hasFirefox = inject('noPage') === null && inject('firefox') !== null;
  return hasFirefox ? ['chromium', 'firefox'] : ['chromium'];
}

const running = new Map<string, Promise<Browser>>();
const homes: string[] = [];

afterAll(async () => {
  for (const browser of running.values()) await (await browser).close();
  for (const home of homes) rmSync(home, { recursive: true, force: true });
});

export async function openPage({
  path = '',
  engine = 'chromium',
  context: options = {},
}: Opening = {}): Promise<Opened> {
  const noPage = inject('noPage');
  if (noPage !== null) throw new Error(noPage);
  const browser = await browserOf(engine);
  const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, ...options });
  const problems: string[] = [];
  await watch(context, problems);
  const page = await context.newPage();
  onTestFinished(async () => {
    await context.close();
    expect(problems).toEqual([]);
  });
  await page.goto(inject('address') + path);
  return { page, context, problems };
}

function browserOf(engine: Engine): Promise<Browser> {
  const already = running.get(engine);
  if (already) return already;
  const found = inject(engine);
  if (!found) throw new Error(`there is no ${engine} here; ask enginesFound() first`);
  const launched =
    engine === 'chromium'
      ? launchChromium(found)
      : launchFirefox(found).then(({ browser, home }) => {
          homes.push(home);
          return browser;
        });
  running.set(engine, launched);
  return launched;
}

function launchChromium({ executablePath, args, env }: Found): Promise<Browser> {
  return chromium.launch({ executablePath, args: [...QUIET, ...args], env: { ...process.env, ...env } });
}

async function watch(context: BrowserContext, problems: string[]): Promise<void> {
  const origin = new URL(inject('address')).origin;
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`policy: ${event.violatedDirective} blocked ${event.blockedURI}`);
    });
  });
  context.on('console', (message) => {
    if (message.type() === 'error') problems.push(`console: ${message.text()}`);
  });
  context.on('weberror', (error) => problems.push(`script: ${error.error().message}`));
  context.on('request', (request) => {
    const url = new URL(request.url());
    const local = url.protocol === 'data:' || url.protocol === 'blob:' || url.origin === origin;
    if (!local) problems.push(`request off origin: ${request.url()}`);
  });
}
