/** Where things stand, from the folder this file is in. */
import { fileURLToPath } from 'node:url';

const folder = (path: string): string => fileURLToPath(new URL(path, import.meta.url)).replace(/\/$/, '');

export const projectFolder = folder('../../');
export const sourceFolder = folder('../../src/');
export const assetsFolder = folder('../../assets/');
export const appFolder = folder('../../dist/app/');
export const cliFolder = folder('../../dist/cli/');
