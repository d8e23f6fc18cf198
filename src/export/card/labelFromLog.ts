/** What the last conversion label of a session says, for printing; null where none was written or it was undone. */
import type { SessionLog } from '../../session/corePort';
import { liveLog } from '../../session/liveLog';
import type { LabelInputs } from './conversionLabel';

/** With the refrigerant as it was written, which need not be what a label is printed for. */
export type WrittenLabel = LabelInputs & { readonly refrigerant: string };

const M3_PER_ML = 1e-6;

export function labelFromLog({ commands }: Pick<SessionLog, 'commands'>): WrittenLabel | null {
  const last = liveLog(commands).findLast(({ command }) => command.do === 'label-conversion');
  if (!last) return null;
  const { refrigerant, grams, oil, mL } = last.command;
  return {
    refrigerant: String(refrigerant),
    chargeKg: Number(grams) / 1000,
    oil: String(oil),
    oilM3: Number(mL) * M3_PER_ML,
  };
}

/** The same out of a session file's text, for a page that does not load what checks such files. Throws `RangeError`. */
export function labelFromText(text: string): WrittenLabel | null {
  const file: unknown = JSON.parse(text);
  const log = fieldOf(file, 'log');
  const commands = fieldOf(log, 'commands');
  const isList =
    Array.isArray(commands) &&
    commands.every((entry) => typeof fieldOf(fieldOf(entry, 'command'), 'do') === 'string');
  if (!isList) throw new RangeError('log.commands');
  return labelFromLog({ commands: commands as SessionLog['commands'] });
}

const fieldOf = (of: unknown, name: string): unknown =>
  typeof of === 'object' && of !== null ? (of as Record<string, unknown>)[name] : undefined;
