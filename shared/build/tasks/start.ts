/** `npm start [-- --port N] [--no-open]`: builds, serves, opens a browser if it can, prints the address last. */
import { spawn } from 'node:child_process';
import { parseArgs } from 'node:util';
import { buildApp } from '../buildApp.ts';
import { appFolder } from '../folders.ts';
import { type Serving, serve } from '../server.ts';

const FIRST_PORT = 4173;
const PORTS_TRIED = 20;

export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args: args.map((arg) => (arg === '--no-open' ? '--noOpen' : arg)),
    options: { port: { type: 'string' }, noOpen: { type: 'boolean', default: false } },
  });
  const port = values.port === undefined ? undefined : Number(values.port);
  if (port !== undefined && !(Number.isInteger(port) && port >= 0 && port <= 65_535)) {
    console.error(`--port needs a whole number from 0 to 65535, not "${values.port}"`);
    return 2;
  }
  await buildApp();
  const { address } = await (port === undefined ? serveOnFreePort() : serve(appFolder, port));
  if (!values.noOpen) openBrowser(address);
  console.log(address);
  return 0;
}

/** The first free port from 4173 on, so that a bookmark and a saved session keep their origin. */
async function serveOnFreePort(): Promise<Serving> {
  for (let port = FIRST_PORT; port < FIRST_PORT + PORTS_TRIED; port++) {
    try {
      return await serve(appFolder, port);
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EADDRINUSE')) throw error;
    }
  }
  return serve(appFolder, 0);
}

/** Quietly does nothing where there is no desktop. */
function openBrowser(address: string): void {
  const [command, ...rest] =
    process.platform === 'darwin'
      ? ['open']
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '']
        : ['xdg-open'];
  if (process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return;
  const child = spawn(command as string, [...rest, address], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}
