/** A number with all its figures, and the decimal mark that is shown. */
import { shownMarks } from './format';

export const asItStands = (value: number): string => String(value).replace('.', shownMarks().decimal);
