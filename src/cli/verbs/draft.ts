/** `draft TEMPLATE`: a whole scenario to start from, with notes for whoever changes it, on standard output. */
import { isTemplateId, TEMPLATE_IDS, templateText } from '../../session/scenario/templates';
import { nearest } from '../../words/nearest';
import { word } from '../../words/words';
import { defineVerb, UsageError } from '../verb';

export default defineVerb({
  name: 'draft',
  summary: 'verbs.draft.summary',
  options: {},
  operands: [{ name: 'TEMPLATE', required: true }],
  async run({ operands: [id] }, io) {
    if (!isTemplateId(id)) {
      const known = nearest(id, TEMPLATE_IDS) ?? TEMPLATE_IDS.join(', ');
      throw new UsageError(word('verbs.draft.unknown', { id, known }));
    }
    io.text(await templateText(id));
    return 0;
  },
});
