/** What is possible now, and why the rest is not, one command a line in the words it is typed in. */
import type { SessionCore } from '../session/corePort';
import { word } from '../words/words';
import { sayRefusal } from './hear';
import { orderLine } from './orderLine';
import { possible } from './possible';

export function helpLines(core: SessionCore): string[] {
  const all = possible(core);
  const now = all.filter(({ whyNot }) => whyNot === null);
  const later = all.flatMap(({ do: command, whyNot }) =>
    whyNot === null
      ? []
      : [word('twin.sit.notNowLine', { command, reason: sayRefusal(whyNot.reason, whyNot.params) })],
  );
  const notNow = later.length === 0 ? [] : [word('twin.sit.notNow'), ...later];
  return [word('twin.sit.helpHead'), ...now.map((one) => orderLine(one)), ...notNow];
}
