/** The rubrics that ship, by id, checked when the project was built. */
import type { Rubric } from '../../../shared/schema/rubric';

const files = import.meta.glob<Rubric>('../../../shared/rubrics/*.yaml', { eager: true, import: 'default' });

export const rubrics: ReadonlyMap<string, Rubric> = new Map(
  Object.values(files).map((rubric) => [rubric.id, rubric]),
);
