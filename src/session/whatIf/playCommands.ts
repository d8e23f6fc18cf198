/**
 * Plays actions at their steps, to the end of the log or to the step where they finish. What is refused is told and left
 * out; where the clock has to stand (practice, at something critical) the rest comes at that moment and is refused.
 */
import type { SessionCore } from '../corePort';
import type { NumberedCommand } from './editLog';

export interface RefusedCommand extends NumberedCommand {
  readonly reason: string;
  readonly params: Readonly<Record<string, string>>;
}

/** `stretchSteps`: `afterStretch` is called each time so many steps are done, and at the end. */
export function playCommands(
  core: SessionCore,
  entries: readonly NumberedCommand[],
  lastStep: number,
  afterStretch: () => void,
  stretchSteps: number,
): RefusedCommand[] {
  const refused: RefusedCommand[] = [];
  const runTo = (step: number): void => {
    while (core.step < step) {
      const stretchEnd = stretchSteps * (Math.floor(core.step / stretchSteps) + 1);
      const { stepsDone } = core.advance(Math.min(step, stretchEnd) - core.step);
      if (stepsDone === 0) return;
      if (core.step === stretchEnd) afterStretch();
    }
  };
  for (const entry of entries) {
    runTo(entry.step);
    const outcome = core.send(entry.command);
    if (!outcome.ok) refused.push({ ...entry, reason: outcome.reason, params: outcome.params });
  }
  runTo(lastStep);
  afterStretch();
  return refused;
}
