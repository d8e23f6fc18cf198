/** What goes along with a view: ids that arguments may take now, and where the probes are. */
import type { IdSet } from '../plant/commandSpecs';
import type { SessionCore } from '../session/corePort';
import { liveLog } from '../session/liveLog';
import type { Choices } from './protocol';

const SETS: readonly IdSet[] = [
  'port',
  'part',
  'hose',
  'can',
  'can-inlet',
  'gauge',
  'air-place',
  'line-place',
  'zone',
  'channel',
  'sheet',
  'cause',
  'replaceable',
  'device',
  'device-place',
  'tank',
  'leak-place',
  'loop-place',
  'cleanable',
];

export function choicesOf(core: SessionCore): Choices {
  return Object.fromEntries(SETS.map((set) => [set, core.choices(set)])) as Record<IdSet, readonly string[]>;
}

/** Where the thermometers were put last, by the commands that still hold. */
export function probesOf(core: SessionCore): { readonly air: string | null; readonly line: string | null } {
  const probes: { air: string | null; line: string | null } = { air: null, line: null };
  for (const { command } of liveLog(core.log().commands)) {
    if (command.do === 'probe-air') probes.air = String(command.at);
    if (command.do === 'probe-line') probes.line = String(command.at);
  }
  return probes;
}
