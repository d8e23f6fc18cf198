/** The page's language: words, texts of scenarios, marks in numbers, and what a screen reader is told to speak. */
import { createSignal } from 'solid-js';
import { ENGLISH_MARKS, type NumberMarks, SPANISH_MARKS, showMarks } from '../units/format';
import { learnWords, setLanguage } from '../words/words';
import { tellIn } from './told';

const MARKS: Readonly<Record<string, NumberMarks>> = { es: SPANISH_MARKS };

const [language, setShown] = createSignal<string | null>(null);

/** Null until there are words. */
export { language };

/** Whatever has been wished for is done in order, so that the last wish is what stands in the end. */
let last: Promise<void> = Promise.resolve();

/** Fetches what is wanted of it so far, then shows it. */
export function speak(wished: string): Promise<void> {
  const done = last.then(() => speakNow(wished));
  last = done.catch(() => undefined);
  return done;
}

async function speakNow(wished: string): Promise<void> {
  await Promise.all([setLanguage(wished).then(() => learnWords('page')), tellIn(wished)]);
  showMarks(MARKS[wished] ?? ENGLISH_MARKS);
  document.documentElement.lang = wished;
  setShown(wished);
}
