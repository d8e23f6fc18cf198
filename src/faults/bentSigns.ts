/** Every bent sign there is, with its reason; told in DEVELOPERS.md too. */
import type { BentSign } from './bentSign';

export const bentSigns: readonly BentSign[] = [];
