/**
 * Texts hold words and nothing else. The page shows them as they are written, so markup would do nothing but stand there; it
 * is refused all the same, and so are addresses: a lesson that travels carries no way out of the machine.
 */

import type { YamlPath } from '../../../shared/schema/readYaml';
import { unseenIn } from '../../../shared/schema/yamlText';
import { marksIn } from '../../units/figuresInText';
import { word } from '../../words/words';
import type { Findings } from './findings';

const MARKUP = /<\/?[a-z!][^<]*>|<script|<!--/i;
const ADDRESS = /\b(?:https?|ftp|file|data|javascript|blob):\S|\bwww\.\w/i;

export function checkTexts(data: unknown, findings: Findings): void {
  for (const [path, text] of textsOf(data, [])) {
    const [found] = MARKUP.exec(text) ?? ADDRESS.exec(text) ?? [];
    if (found !== undefined)
      findings.error(path, 'SCN020', word('check.markup', { found: found.slice(0, 40) }));
    checkFigures(path, text, findings);
    if (unseenIn(text) >= 0) findings.error(path, 'SCN019', word('check.unseenLetter'));
  }
}

/** Only hints and the debrief are told in their reader's units. */
const FOLLOWING: readonly unknown[] = ['hints', 'debrief'];

function checkFigures(path: YamlPath, text: string, findings: Findings): void {
  const follows = FOLLOWING.includes(path[0]);
  const wrong = marksIn(text).find(({ isFigure }) => isFigure !== follows && (follows || isFigure));
  if (wrong === undefined) return;
  const mark = wrong.mark.slice(0, 40);
  const said = follows
    ? word('check.noFigure', { mark, example: '{290 kPa}' })
    : word('check.figureHere', { mark });
  findings.error(path, 'SCN021', said);
}

function* textsOf(data: unknown, path: YamlPath): Generator<[YamlPath, string]> {
  if (typeof data === 'string') yield [path, data];
  else if (Array.isArray(data)) for (const [at, one] of data.entries()) yield* textsOf(one, [...path, at]);
  else if (typeof data === 'object' && data !== null)
    for (const [key, one] of Object.entries(data)) yield* textsOf(one, [...path, key]);
}
