import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Serving, serve } from '../../shared/build/server';

let folder: string;
let serving: Serving;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'portside-server-'));
  writeFileSync(join(folder, 'index.html'), '<p>home</p>');
  writeFileSync(join(folder, 'hash.html'), '<p>hash</p>');
  writeFileSync(join(folder, 'a.js'), 'export {}');
  serving = await serve(folder, 0);
});

afterAll(async () => {
  await serving.close();
  rmSync(folder, { recursive: true });
});

/** The path as it is, where `fetch` would tidy it first. */
function statusOf(path: string, method = 'GET'): Promise<number | undefined> {
  const { hostname, port } = new URL(serving.address);
  return new Promise((resolve, reject) => {
    request({ hostname, port, path, method }, (response) => {
      response.resume();
      resolve(response.statusCode);
    })
      .on('error', reject)
      .end();
  });
}

describe('the server', () => {
  test('gives pages by name, scripts with their type, and the policy with everything', async () => {
    expect(await (await fetch(serving.address)).text()).toContain('home');
    expect(await (await fetch(`${serving.address}hash`)).text()).toContain('hash');
    const script = await fetch(`${serving.address}a.js?version=1`);
    expect(script.headers.get('content-type')).toContain('text/javascript');
    expect(script.headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
    expect(script.headers.get('x-content-type-options')).toBe('nosniff');
  });

  test.each([
    ['/nowhere', 404],
    ['/../package.json', 404],
    ['/%2e%2e/%2e%2e/etc/passwd', 404],
    ['/a.js%00.html', 404],
    ['/%zz', 404],
  ])('answers %s with %i', async (path, status) => {
    expect(await statusOf(path)).toBe(status);
  });

  test('only gives', async () => {
    expect(await statusOf('/', 'POST')).toBe(405);
    expect(await statusOf('/', 'HEAD')).toBe(200);
  });

  test('listens on this machine only', () => {
    expect(new URL(serving.address).hostname).toBe('127.0.0.1');
  });

  test('says that a port is taken', async () => {
    await expect(serve(folder, Number(new URL(serving.address).port))).rejects.toThrow('EADDRINUSE');
  });
});
