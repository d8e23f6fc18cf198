/** What a page shows of the scenario that an id stands for, with its sentences told: one that ships, or one's own. */
import type { ShelfScenario } from '../../shared/schema/shelfScenario';
import { hashOfOwn } from './ownId';
import { scenarioData } from './scenarioFacts';
import { tellJob, tellOwn } from './told';

/** Undefined where there is none, or where another engine looked at it: nobody knows whether this one can play it. */
export async function findJob(id: string): Promise<ShelfScenario | undefined> {
  const hash = hashOfOwn(id);
  if (hash === null) {
    await tellJob(id);
    return scenarioData.find((one) => one.id === id);
  }
  const [{ shownOwn }, { engineHash }] = await Promise.all([
    import('./ownStore'),
    import('../session/engineHash'),
  ]);
  const shown = await shownOwn(hash);
  if (!shown || shown.engineHash !== engineHash) return undefined;
  await tellOwn(id, shown.words);
  return { ...shown.shelf, id };
}
