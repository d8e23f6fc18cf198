/**
 * Finds a Chromium for the browser tests, or fetches one. In order: PORTSIDE_BROWSER, an installed Chromium, Chrome or
 * Edge, Playwright's cache, Playwright's download (fails fast where downloads are blocked), the packed Chromium of the
 * development dependencies (Linux on x64, no root), apt as root on Debian. A candidate counts once it has answered
 * `--version`.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';
import { packedChromium } from './packedChromium';

export interface Browser {
  readonly executablePath: string;
  /** Launch arguments beyond ours. */
  readonly args: readonly string[];
  /** Environment beyond ours. */
  readonly env: Readonly<Record<string, string>>;
  /** Where it came from, for the log. */
  readonly from: string;
  readonly version: string;
}

export type Candidate = Omit<Browser, 'version'>;

/** One place to look; finding nothing is an empty list, failing to look is told to `note`. */
export interface Source {
  readonly from: string;
  readonly look: () => readonly Candidate[] | Promise<readonly Candidate[]>;
}

/** The first candidate that answers; undefined where none does. */
export async function firstThatAnswers(
  sources: readonly Source[],
  note: (line: string) => void,
): Promise<Browser | undefined> {
  for (const { from, look } of sources) {
    try {
      for (const candidate of await look()) {
        const version = versionOf(candidate);
        if (version !== undefined) return { ...candidate, version };
        note(`${from}: ${candidate.executablePath} does not answer --version`);
      }
    } catch (error) {
      note(`${from}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return undefined;
}

/** What `--version` prints, where it names a version and ends well within 20 s. */
export function versionOf({ executablePath, env }: Candidate): string | undefined {
  const { status, stdout } = spawnSync(executablePath, ['--version'], {
    encoding: 'utf8',
    timeout: 20_000,
    env: { ...process.env, ...env },
  });
  return status === 0 && /\d+\.\d+/.test(stdout) ? stdout.trim() : undefined;
}

const plain = (from: string, paths: readonly string[]): Candidate[] =>
  paths
    .filter((path) => existsSync(path))
    .map((executablePath) => ({ executablePath, args: [], env: {}, from }));

/** Every folder of PATH with every name. */
export function onPath(names: readonly string[]): string[] {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

const CHROMIUM_NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];
const CHROMIUM_ELSEWHERE = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

export const chromiumSources: readonly Source[] = [
  { from: 'PORTSIDE_BROWSER', look: namedByEnvironment },
  { from: 'installed', look: () => plain('installed', [...onPath(CHROMIUM_NAMES), ...CHROMIUM_ELSEWHERE]) },
  { from: 'playwright cache', look: () => plain('playwright cache', [chromium.executablePath()]) },
  { from: 'playwright download', look: downloadedByPlaywright },
  { from: 'packed', look: packedChromium },
  { from: 'apt', look: installedByApt },
];

function namedByEnvironment(): Candidate[] {
  const named = process.env.PORTSIDE_BROWSER;
  return named ? [{ executablePath: named, args: [], env: {}, from: 'PORTSIDE_BROWSER' }] : [];
}

function downloadedByPlaywright(): Candidate[] {
  const cli = join(process.cwd(), 'node_modules/playwright-core/cli.js');
  const { status } = spawnSync(process.execPath, [cli, 'install', 'chromium'], {
    timeout: 120_000,
    stdio: 'ignore',
    env: { ...process.env, PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT: '10000' },
  });
  if (status !== 0) throw new Error('the download failed');
  return plain('playwright download', [chromium.executablePath()]);
}

function installedByApt(): Candidate[] {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return [];
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...args: string[]): void => {
    const { status } = spawnSync('apt-get', args, { timeout: 240_000, stdio: 'ignore', env });
    if (status !== 0) throw new Error(`apt-get ${args[0]} failed`);
  };
  apt('update', '-q');
  apt('install', '-y', '-q', '--no-install-recommends', 'chromium');
  return plain('apt', ['/usr/bin/chromium']);
}

/** Firefox is used where it stands; it is never fetched. */
export const firefoxSources: readonly Source[] = [
  {
    from: 'PORTSIDE_FIREFOX',
    look: () =>
      process.env.PORTSIDE_FIREFOX ? plain('PORTSIDE_FIREFOX', [process.env.PORTSIDE_FIREFOX]) : [],
  },
  { from: 'installed', look: () => plain('installed', onPath(['firefox-esr', 'firefox'])) },
];
