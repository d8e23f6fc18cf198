/**
 * What finding out costs, in minutes of a workshop's time; money is brought to minutes at what an hour is billed. Common
 * practice, no source: only their order matters, look before couple, couple before recover, recover before a new part.
 */

/** One reading or look, everything being there for it. */
export function readingMinutes(channel: string): number {
  if (channel.startsWith('gas-')) return 0.5;
  return channel.startsWith('line') || channel.endsWith('scale') ? 1 : 0.5;
}

/** What has to be there first. */
export const SET_UP_MINUTES = {
  /** Hoses on and their couplers opened. */
  gauges: 4,
  /** The car run until its needles stand. */
  running: 3,
  /** A sample to the identifier. */
  sample: 4,
  /** A leak search round the loop. */
  search: 10,
  recovery: 30,
  /** A joint undone and done up. */
  opened: 20,
  /** A part that did not need changing, with its price. */
  part: 60,
} as const;
