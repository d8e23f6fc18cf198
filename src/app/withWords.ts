/** A part of the page that is loaded later, together with the words it says. */
import { type Lot, learnWords } from '../words/words';

export async function withWords<Module>(lots: readonly Lot[], module: Promise<Module>): Promise<Module> {
  const [loaded] = await Promise.all([module, ...lots.map(learnWords)]);
  return loaded;
}
