/** Texts to begin with: templates, and scenarios that ship. Each is fetched when it is chosen, as it is written. */
import { TEMPLATE_IDS, type TemplateId, templateText, templateWords } from '../../session/scenario/templates';
import { languages, spokenLanguage } from '../../words/words';
import type { Templates } from './enclosed';

export { TEMPLATE_IDS, type TemplateId } from '../../session/scenario/templates';

const SHIPPED = '../../../scenarios/';
const shipped = import.meta.glob<string>('../../../scenarios/*.yaml', { query: '?raw', import: 'default' });

/** Throws where there is none. */
export const shippedText = (id: string): Promise<string> => fetched(shipped, `${SHIPPED}${id}.yaml`);

/** In the language that is spoken, where it is told in it. */
export const templateInWords = (id: TemplateId): Promise<string> => templateIn(id, spokenLanguage());

async function templateIn(id: TemplateId, language: string): Promise<string> {
  const [text, words] = await Promise.all([templateText(id), templateWords(id, language)]);
  if (words === null) return text;
  const { toldTemplate } = await import('./toldTemplate');
  return toldTemplate(text, words, language);
}

const linkId = (id: TemplateId, language: string): string => (language === 'en' ? id : `${id}-${language}`);

/** For links: a text that was begun with a template is told by its difference. Told in Spanish it is `one-fault-es`. */
export const templatesForLinks: Templates = {
  ids: TEMPLATE_IDS.flatMap((id) => languages().map((language) => linkId(id, language))),
  async text(linked) {
    for (const id of TEMPLATE_IDS)
      for (const language of languages())
        if (linkId(id, language) === linked) return templateIn(id, language);
    throw new RangeError(`no template ${linked}`);
  },
};

async function fetched(
  texts: Readonly<Record<string, () => Promise<string>>>,
  path: string,
): Promise<string> {
  if (!Object.hasOwn(texts, path)) throw new RangeError(`no text ${path}`);
  return texts[path]();
}
