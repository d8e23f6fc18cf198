/** What somebody who writes a scenario starts from and runs into: templates, and what the codes of findings mean. */
import { PROBLEM_CODES } from '../../../shared/schema/problemCodes';
import { type FindingCode, findingCodes } from '../../prover/findingCodes';
import { TEMPLATE_IDS } from '../../session/scenario/templates';
import { word } from '../../words/words';

export const listTemplates = () =>
  TEMPLATE_IDS.map((id) => ({
    id,
    title: word(`workshop.template.${id}.title`),
    note: word(`workshop.template.${id}.note`),
  }));

export const listCodes = () => {
  const ofProver = Object.keys(findingCodes) as FindingCode[];
  return [...PROBLEM_CODES, ...ofProver].map((code) => ({ id: code, means: word(`codes.${code}`) }));
};
