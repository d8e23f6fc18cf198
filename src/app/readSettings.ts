/**
 * Settings out of a stored text: whatever of it is still a setting; the rest as at the start. Where no language was chosen,
 * the first of those the browser asks for that there is; where no units were, those of the language.
 */
import type { Settings } from '../panels/Menu';

const ENGLISH = 'en';

const PLAIN: Omit<Settings, 'units' | 'language'> = { look: 'auto', bay: 'drawn', sound: 'off' };

/** What gauges are read in where the language is spoken: psi by this trade in English, the metric units elsewhere. */
const plainUnits = (language: string): Settings['units'] => ({
  pressure: language === ENGLISH ? 'psi' : 'kPa',
  temperature: 'degC',
  mass: 'g',
});

const CHOICES = {
  pressure: ['psi', 'kPa', 'bar'],
  temperature: ['degC', 'degF'],
  mass: ['g', 'oz'],
  look: ['auto', 'light', 'dark', 'projector'],
  bay: ['drawn', 'words'],
  sound: ['off', 'quiet', 'medium', 'loud'],
} as const;

const pick = <T extends string>(allowed: readonly T[], value: unknown, otherwise: T): T =>
  allowed.find((one) => one === value) ?? otherwise;

/** `wished`: languages as a browser names them, "es-MX". */
const firstOf = (languages: readonly string[], wished: readonly string[]): string =>
  wished.map((name) => name.slice(0, 2).toLowerCase()).find((name) => languages.includes(name)) ?? ENGLISH;

export function readSettings(
  text: string | null,
  languages: readonly string[] = [ENGLISH],
  wished: readonly string[] = [],
): Settings {
  let given: Record<string, unknown> = {};
  try {
    const parsed: unknown = JSON.parse(text ?? '{}');
    if (typeof parsed === 'object' && parsed !== null) given = parsed as Record<string, unknown>;
  } catch {
    given = {};
  }
  const units = (typeof given.units === 'object' && given.units !== null ? given.units : {}) as Record<
    string,
    unknown
  >;
  const language = pick(languages, given.language, firstOf(languages, wished));
  const plain = plainUnits(language);
  return {
    units: {
      pressure: pick(CHOICES.pressure, units.pressure, plain.pressure),
      temperature: pick(CHOICES.temperature, units.temperature, plain.temperature),
      mass: pick(CHOICES.mass, units.mass, plain.mass),
    },
    look: pick(CHOICES.look, given.look, PLAIN.look),
    bay: pick(CHOICES.bay, given.bay, PLAIN.bay),
    sound: pick(CHOICES.sound, given.sound, PLAIN.sound),
    language,
  };
}

/** Another language brings its units along where nobody had chosen others than those of the language before. */
export function withItsUnits(before: Settings, next: Settings): Settings {
  const plain = plainUnits(before.language);
  const isPlain =
    next.units.pressure === plain.pressure &&
    next.units.temperature === plain.temperature &&
    next.units.mass === plain.mass;
  return before.language !== next.language && isPlain ? { ...next, units: plainUnits(next.language) } : next;
}
