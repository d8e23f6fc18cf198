/** Settings kept in this browser. Storage may refuse or throw; then they last as long as the page. */
import { createSignal } from 'solid-js';
import type { Settings } from '../panels/Menu';
import { languages } from '../words/words';
import { speak } from './language';
import { readSettings, withItsUnits } from './readSettings';
import { keepText } from './storage';

const KEY = 'portside-settings';

function stored(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

const [settings, setSettings] = createSignal<Settings>(
  readSettings(stored(), languages(), navigator.languages),
);

export { settings };

function paintLook({ look }: Settings): void {
  if (look === 'auto') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = look;
}
paintLook(settings());

export function changeSettings(wished: Settings): void {
  const next = withItsUnits(settings(), wished);
  if (next.language !== settings().language) void speak(next.language);
  setSettings(next);
  paintLook(next);
  keepText(KEY, JSON.stringify(next));
}
