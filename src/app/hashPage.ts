/** The page `/hash`: the state hashes of the standard run in this browser, as text, to be compared with the command line's. */
import './styles/index.css';
import type { StandardHash } from '../session/standardRun';
import { learnWords, word } from '../words/words';

export interface StandardHashes {
  readonly engineHash: string;
  readonly hashes: readonly StandardHash[];
}

function line(tag: 'h1' | 'p' | 'li', text: string): HTMLElement {
  const element = document.createElement(tag);
  element.textContent = text;
  return element;
}

function show(root: HTMLElement, { engineHash, hashes }: StandardHashes): void {
  const list = document.createElement('ul');
  list.className = 'hash-list';
  for (const { minute, stateHash } of hashes) {
    const row = line('li', word('app.hash.row', { minutes: String(minute), hash: stateHash }));
    row.dataset.minute = String(minute);
    row.dataset.hash = stateHash;
    list.append(row);
  }
  root.replaceChildren(
    line('h1', word('app.hash.title')),
    list,
    line('p', word('app.hash.engine', { hash: engineHash })),
  );
}

function start(root: HTMLElement): void {
  document.title = word('app.titleOf', { name: word('app.hash.title') });
  root.className = 'pg';
  root.replaceChildren(line('h1', word('app.hash.title')), line('p', word('app.hash.running')));
  const worker = new Worker(new URL('./hash.worker.ts', import.meta.url), { type: 'module' });
  worker.onerror = ({ message }) => root.append(line('p', word('app.failed.error', { reason: message })));
  worker.onmessage = ({ data }: MessageEvent<StandardHashes>) => show(root, data);
}

const root = document.querySelector('#hash');
if (root instanceof HTMLElement) void learnWords('page').then(() => start(root));
