/** Rule and source of what a place allows, in the language that is set; the place's own file holds them in its own. */
import type { Act } from '../../shared/schema/jurisdiction';
import type { LawWords } from '../../shared/schema/lawWords';

let told: Readonly<Record<string, LawWords>> = {};

export function tellLaw(words: Readonly<Record<string, LawWords>>): void {
  told = words;
}

/** Undefined where the place's own words are the ones to show. */
export const lawTold = (place: string, act: Act): LawWords[Act] | undefined => told[place]?.[act];
