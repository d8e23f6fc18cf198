/** What a lazy player has come to: whether to charge, what is wrong, what is changed or cleaned for it. */
export interface Choice {
  readonly decision: 'charge' | 'do-not-charge' | 'refer';
  readonly cause: string;
  /** Lines that mend it, `replace fan` or `clean condenser`. */
  readonly repair: readonly string[];
}
