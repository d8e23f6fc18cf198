/** A test: one thing read or looked at, in one stage. */
import type { StageId } from './stages';

/** What of the bench it takes; `eyes` and thermometers are always there. */
export type ProbeTool =
  | 'eyes'
  | 'thermometer'
  | 'charging-hose'
  | 'gauge-set'
  | 'identifier'
  /** Or soap, or a lamp and dye. */
  | 'detector'
  | 'recovery-machine';

/** How seconds of watching become one value: see `folded`. */
export type Fold = 'mean' | 'watch' | 'fan' | 'slips' | 'ever' | 'swing';

export interface Probe {
  /** `CHANNEL.STAGE` */
  readonly id: string;
  readonly channel: string;
  readonly stage: StageId;
  readonly tool: ProbeTool;
  /** SI; `look` for one of a few things that an eye tells apart, `1` for a share. */
  readonly unit: 'Pa' | 'K' | 'kg' | '1' | 'look';
  readonly fold: Fold;
  /** Signal of a ghost, or `line:PLACE`. */
  readonly truth: string;
  /** Signal of the session, as a person has it. */
  readonly seen: string;
  /** Where a thermometer has to be. */
  readonly place?: string;
  /** Watched from this second of its stage; over `watchedS` where nothing is said. */
  readonly fromS?: number;
  /** Once everything is there for it. */
  readonly minutes: number;
}
