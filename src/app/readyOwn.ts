/** Makes a checked scenario of one's own ready to be played: keeps it, and says what it goes by on the page. */
import { ownWords } from '../../shared/schema/ownWords';
import type { ScenarioData } from '../../shared/schema/scenario';
import { shelfScenario } from '../../shared/schema/shelfScenario';
import { loadVehicle } from '../loop/car/vehicles';
import { engineHash } from '../session/engineHash';
import { fetchScenario } from '../session/scenario/fetchScenario';
import { rubrics } from '../session/scenario/rubrics';
import { scenarioOf } from '../session/scenario/scenario';
import { ownId } from './ownId';
import { keepOwn, type OwnShown } from './ownStore';
import { keptSession } from './savedSession';

/** Null where this browser keeps nothing. One that says just what a shipped one says is that one. */
export async function readyOwn(data: ScenarioData): Promise<string | null> {
  await loadVehicle(data.vehicle);
  const { hash } = scenarioOf(data, rubrics);
  if ((await fetchScenario(data.id))?.hash === hash) return data.id;
  const inUse = (await keptSession())?.log.scenarioHash ?? null;
  return (await keepOwn(hash, ownShown(data), data, inUse)) ? ownId(hash) : null;
}

export function ownShown(data: ScenarioData): OwnShown {
  const { debrief: _end, ...words } = ownWords(data);
  return { shelf: shelfScenario(data), words, engineHash };
}
