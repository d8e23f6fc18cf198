/** What a teacher would miss, or would not want: warnings only. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { word } from '../../words/words';
import type { Findings } from './findings';

const LONG_SENTENCE_WORDS = 30;
/** Words too common to give a fault away. */
const HARMLESS = new Set([
  'dead',
  'low',
  'high',
  'not',
  'weak',
  'blocked',
  'air',
  'wrong',
  'nothing',
  'charge',
]);

export function checkTeaching(data: ScenarioData, findings: Findings): void {
  if (data.tasks.length === 0) findings.warning(['tasks'], 'SCN301', word('check.noTasks'));
  const given = givenAway(data);
  if (given !== undefined)
    findings.warning(['complaint'], 'SCN302', word('check.givesAway', { word: given }));
  if (new Set(data.hints).size < data.hints.length)
    findings.warning(['hints'], 'SCN303', word('check.sameHints'));
  checkDone(data, findings);
  checkLength(data.complaint, ['complaint'], findings);
  data.hints.forEach((hint, at) => {
    checkLength(hint, ['hints', at], findings);
  });
}

function givenAway({ complaint, faults, answer }: ScenarioData): string | undefined {
  const telling = [...faults.map(({ fault }) => fault), ...answer.causes].flatMap((id) => id.split('-'));
  const said = new Set(complaint.toLowerCase().split(/[^a-z]+/));
  return telling.find((word) => word.length > 2 && !HARMLESS.has(word) && said.has(word));
}

/** One event without a subject is done by that event of whatever it is. */
function checkDone({ deliver }: ScenarioData, findings: Findings): void {
  deliver.forEach(({ id, done }, at) => {
    if (!('event' in done)) return;
    const { event, subject } = done;
    const other = deliver.find((one, place) => {
      if (place === at || !('event' in one.done) || one.done.event !== event) return false;
      return one.done.subject === subject ? place < at : subject === undefined;
    });
    if (other) {
      const said = word('check.sameDone', { id, other: other.id, event });
      findings.warning(['deliver', at, 'done'], 'SCN305', said);
    }
  });
}

function checkLength(text: string, path: readonly (string | number)[], findings: Findings): void {
  for (const sentence of text.split(/[.!?]+\s/)) {
    const words = sentence.split(/\s+/).length;
    if (words > LONG_SENTENCE_WORDS) {
      findings.warning(
        path,
        'SCN304',
        word('check.longSentence', { words: String(words), most: String(LONG_SENTENCE_WORDS) }),
      );
    }
  }
}
