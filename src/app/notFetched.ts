/** Why something failed, plainly where a part of the program did not come: every browser has its own words for that. */
import { word } from '../words/words';

export const plainReason = (reason: string): string =>
  /import.*module|module.*import/i.test(reason) ? word('app.missing.inJob') : reason;
