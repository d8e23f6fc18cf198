/** Starts for a scenario of one's own: whole ones with notes for whoever changes them. Fetched one by one, as they are written. */
const FOLDER = '../../../scenarios/templates/';
const files = import.meta.glob<string>('../../../scenarios/templates/*.yaml', {
  query: '?raw',
  import: 'default',
});

/** What a person reads of them, in other languages: as of a scenario that ships, with the notes as remarks. */
const told = import.meta.glob<string>('../../../scenarios/templates/*/*.yaml', {
  query: '?raw',
  import: 'default',
});

/** From the plainest to the one that asks most. */
export const TEMPLATE_IDS = [
  'one-fault',
  'look-alike',
  'two-faults',
  'nothing-wrong',
  'procedure-only',
  'safety-drill',
] as const;
export type TemplateId = (typeof TEMPLATE_IDS)[number];

export const isTemplateId = (id: string): id is TemplateId =>
  (TEMPLATE_IDS as readonly string[]).includes(id);

export const templateText = (id: TemplateId): Promise<string> => files[`${FOLDER}${id}.yaml`]();

/** Null where it is told in English only. */
export async function templateWords(id: TemplateId, language: string): Promise<string | null> {
  const path = `${FOLDER}${language}/${id}.yaml`;
  return Object.hasOwn(told, path) ? told[path]() : null;
}
