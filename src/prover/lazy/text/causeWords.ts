/** What a cause is called, by id and by its title in the language of a scenario; in English where that has none. */
import { flattenWords, type WordGroup } from '../../../../shared/schema/wordGroup';

const files = import.meta.glob<WordGroup>('../../../../shared/words/*/faults.yaml', {
  eager: true,
  import: 'default',
});
const FOLDER = '/words/';

const titles = new Map(
  Object.entries(files).flatMap(([path, group]) => {
    const language = path.slice(path.indexOf(FOLDER) + FOLDER.length, path.lastIndexOf('/'));
    return [...flattenWords(language, group)];
  }),
);

export function causeWords(cause: string, language: string): string {
  const title = titles.get(`${language}.${cause}.title`) ?? titles.get(`en.${cause}.title`) ?? '';
  return `${cause} ${title}`;
}
