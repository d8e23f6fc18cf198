/**
 * The hands of a lazy player: lines as a trainee gives them, taken or refused by an assessed session, and nothing to look
 * with but readings, cues and controls. A session is cut off after twenty minutes of its clock, the last two for leaving
 * the car as it has to be left; how long laziness lasts is a choice, no source.
 */
import { STEPS_PER_SECOND } from '../../session/clock';
import type { SessionCore } from '../../session/corePort';
import { readWords } from '../../session/plan/planWords';
import type { Scenario } from '../../session/scenario/scenario';
import { sensesOf } from '../../twin/senses';

const LONGEST_STEPS = 20 * 60 * STEPS_PER_SECOND;
const LEAVING_STEPS = 2 * 60 * STEPS_PER_SECOND;

export interface TidyHands {
  readonly core: SessionCore;
  readonly scenario: Scenario;
  readonly seed: number;
  /** Gives the lines one after the other, and passes over what is refused; whether all of them were taken. */
  give(...lines: string[]): boolean;
  /** Lets the clock run, as long as there is time; `leaving` takes of the time that is kept for the end. */
  wait(seconds: number, leaving?: boolean): void;
  /** Whether the time is up. */
  isLate(): boolean;
  /** A reading, cue or control; NaN where there is none. */
  sees(signal: string): number;
}

export function tidyHands(core: SessionCore, scenario: Scenario, seed: number): TidyHands {
  const left = (until: number): number => Math.max(0, until - core.step);
  const giveOne = (line: string): boolean => {
    const reading = readWords(line);
    return 'act' in reading && reading.act.kind === 'command' && core.send(reading.act.command).ok;
  };
  return {
    core,
    scenario,
    seed,
    give: (...lines) => lines.map(giveOne).every(Boolean),
    wait(seconds, leaving = false) {
      const until = leaving ? LONGEST_STEPS : LONGEST_STEPS - LEAVING_STEPS;
      core.advance(Math.min(Math.round(seconds * STEPS_PER_SECOND), left(until)));
    },
    isLate: () => left(LONGEST_STEPS - LEAVING_STEPS) === 0,
    sees: (signal) => sensesOf(core).value(signal),
  };
}
