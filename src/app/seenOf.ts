/** What goes along with a view: ids that arguments may take now, and where the probes are. */
import { ID_SETS, type IdSet } from '../plant/commandSpecs';
import type { SessionCore } from '../session/corePort';
import { liveLog } from '../session/liveLog';
import type { Choices } from './protocol';

export function choicesOf(core: SessionCore): Choices {
  return Object.fromEntries(ID_SETS.map((set) => [set, core.choices(set)])) as Record<
    IdSet,
    readonly string[]
  >;
}

/** Which channel a command gives its place. */
const PLACED: Readonly<Record<string, string>> = {
  'probe-air': 'air',
  'probe-line': 'line',
  sniff: 'detector',
  soap: 'soap',
  lamp: 'lamp',
};

/** Where thermometers, detector, soap and lamp were put last, by the commands that still hold. */
export function probesOf(core: SessionCore): Readonly<Record<string, string>> {
  const probes: Record<string, string> = {};
  for (const { command } of liveLog(core.log().commands)) {
    const channel = PLACED[command.do];
    if (channel !== undefined) probes[channel] = String(command.at);
  }
  return probes;
}
