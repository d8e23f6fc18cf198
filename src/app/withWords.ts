/** A part of the page that is loaded later, together with the words it says. */
import { type Bundle, learnWords } from '../words/words';

export async function withWords<Module>(
  bundles: readonly Bundle[],
  module: Promise<Module>,
): Promise<Module> {
  const [loaded] = await Promise.all([module, ...bundles.map(learnWords)]);
  return loaded;
}
