/** Texts to begin with: templates, and scenarios that ship. Each is fetched when it is chosen, as it is written. */
import { isTemplateId, TEMPLATE_IDS, templateText } from '../../session/scenario/templates';
import type { Templates } from './enclosed';

export { TEMPLATE_IDS, type TemplateId, templateText } from '../../session/scenario/templates';

const SHIPPED = '../../../scenarios/';
const shipped = import.meta.glob<string>('../../../scenarios/*.yaml', { query: '?raw', import: 'default' });

/** Throws where there is none. */
export const shippedText = (id: string): Promise<string> => fetched(shipped, `${SHIPPED}${id}.yaml`);

/** For links: a text that was begun with a template is told by its difference. */
export const templatesForLinks: Templates = {
  ids: TEMPLATE_IDS,
  async text(id) {
    if (!isTemplateId(id)) throw new RangeError(`no template ${id}`);
    return templateText(id);
  },
};

async function fetched(
  texts: Readonly<Record<string, () => Promise<string>>>,
  path: string,
): Promise<string> {
  if (!Object.hasOwn(texts, path)) throw new RangeError(`no text ${path}`);
  return texts[path]();
}
