/** What a plan or a key may wait for. Apart from the schemas, so that reading them loads nothing. */
export const WAITS = ['10 s', '1 min', '5 min', 'until something happens'] as const;
export type Wait = (typeof WAITS)[number];
