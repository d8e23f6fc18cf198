/** What the last conversion label of a session says, for printing; null where none was written or it was undone. */
import type { SessionLog } from '../../session/corePort';
import { liveLog } from '../../session/liveLog';
import type { LabelInputs } from './conversionLabel';

const M3_PER_ML = 1e-6;

export function labelFromLog({ commands }: Pick<SessionLog, 'commands'>): LabelInputs | null {
  const last = liveLog(commands).findLast(({ command }) => (command.do as string) === 'label-conversion');
  if (!last) return null;
  const { grams, oil, mL } = last.command;
  return { chargeKg: Number(grams) / 1000, oil: String(oil), oilM3: Number(mL) * M3_PER_ML };
}
