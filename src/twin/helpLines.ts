/** What is possible now, and why the rest is not, one command a line in the words it is typed in. */
import type { SessionCore } from '../session/corePort';
import { word } from '../words/words';
import { sayRefusal } from './hear';
import { type Possible, type PossibleArg, possible } from './possible';

export function helpLines(core: SessionCore): string[] {
  const all = possible(core);
  const now = all.filter(({ whyNot }) => whyNot === null);
  const later = all.flatMap(({ do: command, whyNot }) =>
    whyNot === null
      ? []
      : [word('twin.sit.notNowLine', { command, reason: sayRefusal(whyNot.reason, whyNot.params) })],
  );
  const notNow = later.length === 0 ? [] : [word('twin.sit.notNow'), ...later];
  return [word('twin.sit.helpHead'), ...now.map(usage), ...notNow];
}

function usage({ do: command, args }: Possible): string {
  return [command, ...args.map(argText)].join(' ');
}

function argText({ name, kind, options, range }: PossibleArg): string {
  if (range) {
    const { min, max, unit } = range;
    return `<${word('twin.sit.numbers', { name, min: String(min), max: String(max), unit })}>`;
  }
  return `<${options.join(kind === 'ids' ? ',' : ' | ')}>`;
}
