/** A domain of the score, for a reader. */
import { isWordId, say } from '../words/words';

export function domainName(id: string): string {
  const wordId = `task.rubric.domainName.${id}`;
  return isWordId(wordId) ? say({ id: wordId }) : id;
}
