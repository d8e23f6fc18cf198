/** What a search for leaks shows in the bay: hood, joints undone, what ticked, bubbled, glowed or hisses. */
import type { Message } from '../words/words';
import type { Senses } from './senses';

const SHOWN = [
  ['detector.ticks', 'twin.search.ticks'],
  ['soap.bubbles', 'twin.search.bubbles'],
  ['lamp.glow', 'twin.search.glow'],
] as const;

export function searchLines(senses: Senses): Message[] {
  const lines: Message[] = [];
  if (senses.has('hood.open') && !senses.isOn('hood.open')) lines.push({ id: 'twin.search.hoodShut' });
  const opened = senses.value('loop.openedCount');
  if (opened > 0) lines.push({ id: 'twin.search.opened', values: { count: String(opened) } });
  if (senses.isOn('leak.hissing')) lines.push({ id: 'twin.search.hiss' });
  for (const [signal, id] of SHOWN) {
    const level = senses.value(signal);
    if (level > 0) lines.push({ id, values: { level: String(level) } });
  }
  return lines;
}
