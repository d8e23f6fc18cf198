/**
 * The server of the built app: static files from one folder on 127.0.0.1, with the right types and the content
 * security policy. `/name` answers with name.html where there is one; anything else unknown is 404.
 */
import { createReadStream, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';
import { contentSecurityPolicyHeader } from './policy.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.ico': 'image/x-icon',
  '.txt': 'text/plain; charset=utf-8',
  '.md': 'text/plain; charset=utf-8',
  '.woff2': 'font/woff2',
  '.mp3': 'audio/mpeg',
  '.ogg': 'audio/ogg',
  '.wav': 'audio/wav',
  '.webmanifest': 'application/manifest+json',
};

const HEADERS = {
  'Content-Security-Policy': contentSecurityPolicyHeader,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
};

export interface Serving {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Port 0 takes any free port. Rejects with the error of node:net, such as a port in use. */
export async function serve(folder: string, port: number): Promise<Serving> {
  const server = createServer((request, response) => answer(folder, request, response));
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
  const { port: taken } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${taken}/`, close: () => closeServer(server) };
}

function closeServer(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((resolve) => server.close(() => resolve()));
}

function answer(folder: string, request: IncomingMessage, response: ServerResponse): void {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { ...HEADERS, Allow: 'GET, HEAD' }).end();
    return;
  }
  const found = fileOf(folder, request.url ?? '/');
  if (!found) {
    response.writeHead(404, { ...HEADERS, 'Content-Type': 'text/plain' }).end('404');
    return;
  }
  const hashed = /-[\w-]{8}\.\w+$/.test(found.file);
  response.writeHead(200, {
    ...HEADERS,
    'Content-Type': TYPES[extname(found.file)] ?? 'application/octet-stream',
    'Content-Length': found.sizeB,
    'Cache-Control': hashed ? 'max-age=31536000, immutable' : 'no-cache',
  });
  if (request.method === 'HEAD') response.end();
  else
    createReadStream(found.file)
      .on('error', () => response.destroy())
      .pipe(response);
}

/** The file a request path stands for; undefined where there is none or the path leaves the folder. */
function fileOf(folder: string, url: string): { file: string; sizeB: number } | undefined {
  const path = pathOf(url);
  if (path === undefined) return undefined;
  const file = normalize(join(folder, path));
  if (file !== normalize(folder) && !file.startsWith(normalize(folder + sep))) return undefined;
  for (const candidate of [file, `${file}.html`, join(file, 'index.html')]) {
    const stat = statSync(candidate, { throwIfNoEntry: false });
    if (stat?.isFile()) return { file: candidate, sizeB: stat.size };
  }
  return undefined;
}

function pathOf(url: string): string | undefined {
  try {
    const path = decodeURIComponent(new URL(url, 'http://host').pathname);
    return path.includes('\0') ? undefined : path;
  } catch {
    return undefined;
  }
}
