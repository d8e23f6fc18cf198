/** Settings kept in this browser. Storage may refuse or throw; then they last as long as the page. */
import { createSignal } from 'solid-js';
import type { Settings } from '../panels/Menu';

const KEY = 'portside-settings';

const PLAIN: Settings = { units: { pressure: 'psi', temperature: 'degC', mass: 'g' }, look: 'auto', bay: 'drawn' };

const CHOICES = {
  pressure: ['psi', 'kPa', 'bar'],
  temperature: ['degC', 'degF'],
  mass: ['g', 'oz'],
  look: ['auto', 'light', 'dark', 'projector'],
  bay: ['drawn', 'words'],
} as const;

const pick = <T extends string>(allowed: readonly T[], value: unknown, otherwise: T): T =>
  allowed.find((one) => one === value) ?? otherwise;

/** Whatever of a stored text is still a setting; the rest as at the start. */
export function readSettings(text: string | null): Settings {
  let given: Record<string, unknown> = {};
  try {
    const parsed: unknown = JSON.parse(text ?? '{}');
    if (typeof parsed === 'object' && parsed !== null) given = parsed as Record<string, unknown>;
  } catch {
    given = {};
  }
  const units = (typeof given.units === 'object' && given.units !== null ? given.units : {}) as Record<string, unknown>;
  return {
    units: {
      pressure: pick(CHOICES.pressure, units.pressure, PLAIN.units.pressure),
      temperature: pick(CHOICES.temperature, units.temperature, PLAIN.units.temperature),
      mass: pick(CHOICES.mass, units.mass, PLAIN.units.mass),
    },
    look: pick(CHOICES.look, given.look, PLAIN.look),
    bay: pick(CHOICES.bay, given.bay, PLAIN.bay),
  };
}

function stored(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

const [settings, setSettings] = createSignal<Settings>(readSettings(stored()));
export { settings };

function paintLook({ look }: Settings): void {
  if (look === 'auto') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = look;
}
paintLook(settings());

export function changeSettings(next: Settings): void {
  setSettings(next);
  paintLook(next);
  try {
    localStorage.setItem(KEY, JSON.stringify(next));
  } catch {
    // Kept for this page only.
  }
}
