/**
 * Licences of what ships: the dependencies of package.json and theirs, as installed. Only permissive ones pass, those
 * that ask for no more than their notice.
 */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { projectFolder } from './folders.ts';

const PERMISSIVE = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'CC0-1.0',
  'ISC',
  'MIT',
  'Unlicense',
  'Zlib',
]);

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: unknown;
  readonly dependencies?: Readonly<Record<string, string>>;
}

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly permissive: boolean;
}

export function shippedPackages(): ShippedPackage[] {
  const seen = new Map<string, ShippedPackage>();
  const visit = (folder: string): void => {
    const manifest = manifestOf(folder);
    for (const name of Object.keys(manifest.dependencies ?? {})) {
      const found = findPackage(folder, name);
      if (seen.has(found)) continue;
      const { version, license } = manifestOf(found);
      const licence = typeof license === 'string' ? license : 'none given';
      seen.set(found, { name, version, licence, permissive: isPermissive(licence) });
      visit(found);
    }
  };
  visit(projectFolder);
  return [...seen.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

const manifestOf = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** As Node looks for it: in node_modules of the folder, then of each folder above, within the project. */
function findPackage(from: string, name: string): string {
  for (let folder = from; folder.startsWith(projectFolder); folder = dirname(folder)) {
    const candidate = join(folder, 'node_modules', name);
    if (existsSync(join(candidate, 'package.json'))) return candidate;
  }
  throw new Error(`${name} is not installed; run npm ci`);
}

/** An SPDX expression: of alternatives one has to be permissive, of what holds together all. */
export function isPermissive(expression: string): boolean {
  const plain = expression.replace(/[()]/g, ' ').trim();
  return plain
    .split(/\s+OR\s+/)
    .some((choice) => choice.split(/\s+AND\s+/).every((name) => PERMISSIVE.has(name.trim())));
}
