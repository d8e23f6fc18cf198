/**
 * What page and worker say to each other. Commands go in; frames (Float64Array, passed by transfer) and, when something
 * changed that is no number, the view come out. One buffer goes to and fro.
 */
import type { SaturationLine } from '../instruments/saturation';
import type { DebriefData, Trace } from '../panels/debriefModel';
import type { RubricOutline } from '../panels/rubricOutline';
import type { Lapse, RunOn } from '../panels/sessionModel';
import type { WhatIfTold } from '../panels/whatIfModel';
import type { Command, IdSet, Outcome } from '../plant/commandSpecs';
import type { SignalSpec } from '../plant/signalTypes';
import type { ShapeProblem } from '../session/commandShape';
import type { Mode, SessionLog, SessionView } from '../session/corePort';
import type { BrokenLogError, OtherLogError } from '../session/logProblem';
import type { PastMinutes } from './gaugeHistory';
import type { RerunAsk } from './rerunDoor';

export interface OpenRequest {
  /** As the page knows it: one that ships, or one's own (ownId.ts). */
  readonly scenarioId: string;
  readonly mode: Mode;
  readonly seed: number;
  /** Run again from this log first. */
  readonly log: SessionLog | null;
}

export type ToWorker =
  | { readonly type: 'open'; readonly request: OpenRequest }
  | { readonly type: 'command'; readonly serial: number; readonly command: Command }
  /** `serial` counts them. */
  | { readonly type: 'lapse'; readonly serial: number; readonly lapse: Lapse }
  | { readonly type: 'runOn'; readonly how: RunOn }
  | { readonly type: 'pause'; readonly paused: boolean }
  | { readonly type: 'buffer'; readonly frame: Float64Array }
  /** What was lived for it is lent to the worker at the other end of `lend`. */
  | { readonly type: 'debrief'; readonly lend: MessagePort }
  /** What the end of a session needs is fetched ahead. */
  | { readonly type: 'fetchEnd' }
  /** The session file alone, of a job that may still go on. */
  | { readonly type: 'file' }
  /** To a worker that holds no session. */
  | { readonly type: 'rerun'; readonly ask: RerunAsk };

export type Choices = Readonly<Record<IdSet, readonly string[]>>;

export interface Seen {
  readonly view: SessionView;
  readonly choices: Choices;
  /** Where what has a place was put last, by channel. */
  readonly probes: Readonly<Record<string, string>>;
}

export interface Opened extends Seen {
  readonly type: 'opened';
  readonly channels: readonly SignalSpec[];
  readonly saturation: SaturationLine;
  readonly rubric: RubricOutline;
  readonly past: PastMinutes;
  readonly stateHash: string;
  /** Seconds on the wall that running the log again took. */
  readonly replaySeconds: number;
}

/** What comes of a what-if, with the number of the wish it answers. */
export type WhatIfMessage =
  | { readonly type: 'whatIfReady' }
  | { readonly type: 'row'; readonly ids: readonly string[]; readonly values: Float64Array }
  | {
      readonly type: 'trying';
      readonly serial: number;
      readonly traces: readonly Trace[];
      /** Where the two part, once that is known. */
      readonly apartStep: number | null;
    }
  | {
      readonly type: 'tried';
      readonly serial: number;
      readonly traces: readonly Trace[];
      readonly told: WhatIfTold;
    }
  | { readonly type: 'notTried'; readonly serial: number; readonly problem: ShapeProblem | null };

export interface FrameMessage {
  readonly type: 'frame';
  readonly frame: Float64Array;
  readonly step: number;
  readonly lapse: Lapse;
  /** Serial of the last lapse that was asked for and is in this. */
  readonly lapseSerial: number;
  readonly runningOn: RunOn | null;
  readonly behind: boolean;
}

export type FromWorker =
  | Opened
  | FrameMessage
  | ({ readonly type: 'seen' } & Seen)
  | { readonly type: 'outcome'; readonly serial: number; readonly outcome: Outcome }
  | { readonly type: 'clockFell'; readonly to: Lapse; readonly notable: string | null; readonly step: number }
  /** How much of a log has been run again, 0 to 1. */
  | { readonly type: 'ranAgain'; readonly share: number }
  | { readonly type: 'log'; readonly log: SessionLog }
  | { readonly type: 'file'; readonly file: string }
  | { readonly type: 'debriefed'; readonly debrief: DebriefData }
  | { readonly type: 'weighed'; readonly debrief: DebriefData }
  | WhatIfMessage
  | {
      readonly type: 'failed';
      readonly reason: string;
      /** Command of the log that could not have been given, and the word for why. */
      readonly broken?: Pick<BrokenLogError, 'number' | 'reason' | 'params'>;
      /** Whose log it is, where it is another's. */
      readonly other?: OtherLogError['other'];
    };
