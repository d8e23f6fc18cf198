/** Of 100, what passes where nothing critical was done: common practice, no source. */
export const PASS_MARK = 75;
