/** A domain of the score, for a reader. */
import { isWordId, say } from '../words/words';

export function domainName(id: string): string {
  const wordId = `debrief.domain.${id}`;
  return isWordId(wordId) ? say({ id: wordId }) : id;
}
