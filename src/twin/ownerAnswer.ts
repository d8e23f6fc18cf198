/** What the owner says when asked; does not know where the scenario says nothing. */
import type { ScenarioData } from '../../shared/schema/scenario';
import { word } from '../words/words';

type Question = keyof NonNullable<ScenarioData['owner']>;

export function ownerAnswer({ owner = {} }: Pick<ScenarioData, 'owner'>, about: string): string {
  const answer = owner[about as Question];
  return answer === undefined ? word('twin.owner.unknown') : word('twin.owner.says', { answer });
}
