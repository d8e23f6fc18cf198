/** The five domains of a score, in the order they are always told. Apart from the schemas, so that reading them loads nothing. */
export const DOMAINS = ['safety', 'finding', 'connecting', 'charging', 'diagnosis'] as const;
export type Domain = (typeof DOMAINS)[number];
