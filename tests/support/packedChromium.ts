/**
 * The Chromium that comes packed in a development dependency: Linux on x64, no root needed. Unpacked into node_modules,
 * by a process of its own because the package reads its settings from the environment. Where the system lacks the
 * libraries it wants, those packed with it are used instead. The fonts packed with it are looked for in folders of another
 * machine; without any it falls over at the first letter, so it is told where they lie, beside those of the system.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from '../../shared/build/folders';
import type { Candidate } from './findBrowser';

const UNPACK =
  "import chromium from '@sparticuz/chromium'; process.stdout.write(await chromium.executablePath());";

/** Its own sandbox and helper process need rights a container seldom has. */
const ARGS = ['--no-sandbox', '--no-zygote'];

export function packedChromium(): Candidate[] {
  if (process.platform !== 'linux' || process.arch !== 'x64') return [];
  const folder = join(projectFolder, 'node_modules/.cache/portside-chromium');
  mkdirSync(folder, { recursive: true });
  const executablePath = execFileSync(process.execPath, ['--input-type=module', '--eval', UNPACK], {
    cwd: projectFolder,
    encoding: 'utf8',
    timeout: 120_000,
    env: { ...process.env, TMPDIR: folder, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' },
  });
  const fonts = { FONTCONFIG_FILE: fontsBelow(folder) };
  const candidate = { executablePath, args: ARGS, env: fonts, from: 'packed' };
  return [candidate, { ...candidate, env: { ...fonts, LD_LIBRARY_PATH: join(folder, 'al2023/lib') } }];
}

function fontsBelow(folder: string): string {
  const file = join(folder, 'fonts.conf');
  const inXml = (name: string): string => join(folder, name).replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  writeFileSync(
    file,
    `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  <dir>${inXml('fonts')}</dir>
  <cachedir>${inXml('fonts-cache')}</cachedir>
</fontconfig>
`,
  );
  return file;
}
