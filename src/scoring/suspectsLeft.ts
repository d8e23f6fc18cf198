/** The shrinking list of suspects, for a reader: after each trial who is left, the likeliest first. No shares, no bits. */
import { causesIn } from '../suspects/causes';
import type { Observation } from '../suspects/observation';
import { PROVEN } from '../suspects/proven';
import type { WeighedTrials } from '../suspects/weighTrials';

export interface SuspectLeft {
  /** One cause, or the two of a pair. */
  readonly causes: readonly string[];
  readonly standing: 'proven' | 'likely' | 'open';
}

export interface SuspectsLeft {
  /** Of the trial's last reading; 0 before any. */
  readonly step: number;
  readonly seen: readonly Pick<Observation, 'channel' | 'value' | 'unit'>[];
  readonly left: readonly SuspectLeft[];
  /** Causes that were left before and are no longer. */
  readonly gone: number;
}

const LIKELY = 0.4;
/** A suspect is left while it has this share of what the likeliest has [guess]. */
const LEFT = 0.05;

export function suspectsLeft({ causes, prior, after }: WeighedTrials): readonly SuspectsLeft[] {
  let before = causes.length;
  const told = (shares: readonly number[]): readonly SuspectLeft[] => {
    const most = Math.max(...shares);
    return causes
      .map((cause, at) => ({ cause, share: shares[at] }))
      .filter(({ share }) => share >= LEFT * most)
      .sort((a, b) => b.share - a.share)
      .map(({ cause, share }) => ({ causes: causesIn(cause), standing: standingOf(share) }));
  };
  const first: SuspectsLeft = { step: 0, seen: [], left: told(prior), gone: 0 };
  return [
    first,
    ...after.map(({ seen, shares }): SuspectsLeft => {
      const left = told(shares);
      const gone = Math.max(0, before - left.length);
      before = left.length;
      return {
        step: seen[seen.length - 1].step,
        seen: seen.map(({ channel, value, unit }) => ({ channel, value, unit })),
        left,
        gone,
      };
    }),
  ];
}

function standingOf(share: number): SuspectLeft['standing'] {
  if (share >= PROVEN) return 'proven';
  return share >= LIKELY ? 'likely' : 'open';
}
