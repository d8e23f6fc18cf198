/**
 * The words of a session, of the drill and of the pages to print. Whoever opens one of them imports this before anything
 * that says a word; so what the page shows first does not wait for them.
 */
import type { WordGroup } from '../../shared/schema/words';
import { learnWords } from './words';

learnWords(
  import.meta.glob<WordGroup>(
    [
      '../../shared/words/en/*.yaml',
      '!../../shared/words/en/{app,shelf,help,instrument,name}.yaml',
      '!../../shared/words/en/{cli,verbs,signs,report,loop,properties,suspects,check}.yaml',
    ],
    { eager: true, import: 'default' },
  ),
);
