/** Every language says what English says: the same ids, the same places for values, and nothing left in English. */
import { describe, expect, it } from 'vitest';
import { featureWords, idsIn, LANGUAGES, textOf } from '../../shared/build/languageFiles';
import { lotOf } from '../../shared/build/wordLots';
import { sameFigures } from '../../shared/schema/sameFigures';
import { placeholdersOf } from '../../shared/schema/wordGroup';
import { checkTranslation } from '../../src/scoring/checkTranslation';
import { learnWords, setLanguage, word } from '../../src/words/words';

const others = LANGUAGES.slice(1);
const features = idsIn('shared/words/en');

/** Names, symbols and words that are the same in both. */
const SAME: Readonly<Record<string, readonly RegExp[]>> = {
  es: [
    /^app\.(title|titleOf|hash\.row)$/,
    /^(carCard\.law\.place|law\.place|task\.country)\.australia$/,
    /^(name\.choice|task\.oil)\.mineral$/,
    /^task\.(oil\.(PAG|POE)|gas\.R-\w+)$/,
    /^(cli\.usageOfVerb|panels\.car\.(ac|rpm)|panels\.service\.motor|report\.axis\.(micron|errorPercent))$/,
    /^(help\.unit|instrument)\.\w+$/,
    /^(workshop\.(mark\.error|found\.mendKey)|prove\.worth\.nats|shelf\.minutes|debrief\.next\.open|instrument\.plot\.minute|drill\.name\.cover|work\.clock\.run\w+)$/,
  ],
};

const saysNothing = (sentence: string): boolean => !/\p{L}{3}/u.test(sentence.replace(/\{\w+\}/g, ''));

describe.each(others)('the words in %s', (language) => {
  it.each(features)('of %s are all there, with the same places for values', (feature) => {
    const english = featureWords('en', feature);
    const own = featureWords(language, feature);
    expect([...own.keys()].sort()).toEqual([...english.keys()].sort());
    for (const [id, sentence] of english)
      expect(`${id}: ${placeholdersOf(own.get(id) ?? '')}`).toBe(`${id}: ${placeholdersOf(sentence)}`);
  });

  it('are not left in English', () => {
    const left = features.flatMap((feature) => {
      const own = featureWords(language, feature);
      return [...featureWords('en', feature)]
        .filter(([id, sentence]) => own.get(id) === sentence && !saysNothing(sentence))
        .map(([id]) => id);
    });
    expect(left.filter((id) => !SAME[language].some((same) => same.test(id)))).toEqual([]);
  });

  it('say neither "click" nor "drag" nor "please", and shout at nobody', () => {
    const said = features
      .filter((feature) => lotOf(feature) !== 'line')
      .flatMap((feature) => [...featureWords(language, feature)])
      .filter(([, sentence]) => /[!¡]|arrastr|por favor|hacer clic|haga clic/i.test(sentence));
    expect(said).toEqual([]);
  });
});

it.each(LANGUAGES)(
  'what stands one behind the other over the findings is whole sentences in %s',
  (language) => {
    const said = featureWords(language, 'workshop');
    const ids = ['errors', 'advice', 'sound', 'soundPlayed', 'playing'].map((id) => `workshop.found.${id}`);
    expect(ids.filter((id) => !/^\p{Lu}.*\.$/u.test(said.get(id) ?? ''))).toEqual([]);
  },
);

describe('a language', () => {
  it('is spoken once it is set, and English again after it', async () => {
    await setLanguage('es');
    await learnWords('job');
    expect(word('help.menu')).toBe('Menú');
    expect(word('work.clock.heldAfter', { time: '01:00' })).toBe('Reloj detenido en 01:00');
    await setLanguage('en');
    expect(word('help.menu')).toBe('Menu');
  });
});

describe('figures of a translation', () => {
  it('are those of the original, however they are marked', () => {
    expect(sameFigures('0.48 kg at 32 °C, 310,000 km', '310 000 km, a 32 °C: 0,48 kg')).toBeNull();
    expect(sameFigures('−26 °C, 50%', 'a −26 °C y 50 %')).toBeNull();
    expect(sameFigures('1,500 rpm', '1500 rpm')).toBeNull();
  });

  it('are told where one is missing, spare, or has another unit', () => {
    expect(sameFigures('480 g', '48 g')).toBe('it lacks 480 g; it has 48 g, which the original has not');
    expect(sameFigures('30 psi', '30 bar')).toMatch(/lacks 30 psi/);
    expect(sameFigures('no figure', '2 latas')).toMatch(/^it has 2/);
  });
});

describe('a scenario in another language', () => {
  const scenario = textOf('scenarios/weighed-in.yaml');
  const told = textOf('scenarios/es/weighed-in.yaml');
  const file = 'scenarios/es/weighed-in.yaml';
  const check = (text: string) =>
    checkTranslation(file, text, scenario).map(({ at, message }) => `${at} ${message}`);

  it('is checked with the scenario', () => {
    expect(check(told)).toEqual([]);
    expect(check('title: Pesada\n').join('\n')).toMatch(/"complaint" is missing/);
    expect(check(told.replace('complaint:', 'complain:')).join('\n')).toMatch(/did you mean "complaint"/);
    expect(check(`${told}tools: []\n`).join('\n')).toMatch(
      /^scenarios\/es\/weighed-in\.yaml:\d+:1 unknown key "tools"/,
    );
    expect(check('title: [\n').join('\n')).toMatch(/^scenarios\/es\/weighed-in\.yaml:/);
  });
});
