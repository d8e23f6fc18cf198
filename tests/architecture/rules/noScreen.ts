/** Below the screen nothing touches a document, a window, a timer, a store or a network; only cli knows a process. */
import { folderOf, isBelowScreen } from '../layers';
import { globalReferences } from '../references';
import { findingAt, type Rule } from '../sourceFile';

const OF_A_SCREEN = new Set([
  'document',
  'window',
  'navigator',
  'location',
  'history',
  'localStorage',
  'sessionStorage',
  'indexedDB',
  'requestAnimationFrame',
  'setTimeout',
  'setInterval',
  'queueMicrotask',
  'fetch',
  'alert',
  'console',
  'HTMLElement',
  'Element',
  'Event',
]);
const OF_A_PROCESS = new Set(['process', 'Buffer', '__dirname', '__filename']);

export const noScreen: Rule = {
  name: 'no screen',
  check(file) {
    const folder = folderOf(file.path);
    if (folder === undefined) return [];
    const screen = isBelowScreen(file.path) ? globalReferences(file, OF_A_SCREEN) : [];
    const process = folder === 'cli' ? [] : globalReferences(file, OF_A_PROCESS);
    return [...screen, ...process].map(({ name, node }) =>
      findingAt(file, node, `${folder} does not know ${name}`),
    );
  },
};
