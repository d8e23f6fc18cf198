/**
 * On so low a screen, or in so large a text, what stands over and under the file would leave it no room: there it is folded
 * until it is wanted.
 */
export const isLowScreen = (): boolean => matchMedia('(height < 40em)').matches;
