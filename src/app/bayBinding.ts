/**
 * Session to bay and back: view and channels become the bay's frame, its intents become commands or open a form. The bay
 * is loaded when the work screen stands; until then, and where it cannot be drawn, everything works from the panels.
 */
import { createEffect, createMemo, createRoot, createSignal, on, onCleanup } from 'solid-js';
import type { BayCallbacks, BayTheme, BayView, ZoomStep } from '../bay/bayApi';
import { couplerId } from '../bay/itemIds';
import { afterwards } from '../panels/afterwards';
import type { WorkUi } from '../panels/workUi';
import { word } from '../words/words';
import { bayFrameOf } from './bayFrameOf';
import { bayHoseOf } from './bayHoses';
import { bayIntents } from './bayIntents';
import { bayPrintOf } from './bayPrintOf';
import { peeking } from './peeking';
import type { RunningSession } from './session';
import { settings } from './settings';

export interface BayHandle {
  zoom(step: ZoomStep): void;
  dispose(): void;
}

const themeNow = (isDark: boolean): BayTheme => {
  const { look } = settings();
  if (look !== 'auto') return look;
  return isDark ? 'dark' : 'light';
};

/** A hose is looked at by its coupler. */
function bayIdOf(id: string): string {
  const hose = bayHoseOf(id);
  return hose === null || hose === 'utility' ? id : couplerId(hose);
}

export function attachBay(host: HTMLElement, session: RunningSession, ui: WorkUi): BayHandle {
  let view: BayView | null = null;
  let gone = false;
  let stop: () => void = () => {};
  const callbacks: BayCallbacks = bayIntents(session, ui);
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const start = async (): Promise<void> => {
    const { createBay } = await import('../bay/bayView');
    if (gone) return;
    view = await createBay(host, session.model.layout, themeNow(dark.matches), callbacks);
    if (gone) view.dispose();
    else {
      stop = follow(view, session, ui, dark);
      const near = view.closeUp;
      ui.showPictures((id, width, height) => near(bayIdOf(id), width, height));
    }
  };
  start().catch(() => {
    if (gone) return;
    const note = document.createElement('p');
    note.className = 'emp';
    note.textContent = word('panels.missing.drawing');
    host.replaceChildren(note);
  });
  return {
    zoom: (step) => view?.zoom(step),
    dispose() {
      gone = true;
      ui.showPictures(null);
      stop();
      view?.dispose();
    },
  };
}

const readsAlike = (before: unknown, now: unknown): boolean => JSON.stringify(before) === JSON.stringify(now);

/** The machine may go dark in the middle of a session. */
function follow(view: BayView, session: RunningSession, ui: WorkUi, dark: MediaQueryList): () => void {
  return createRoot((dispose) => {
    const [isDark, setDark] = createSignal(dark.matches);
    const heed = (): void => void setDark(dark.matches);
    dark.addEventListener('change', heed);
    onCleanup(() => dark.removeEventListener('change', heed));
    const print = createMemo(() => bayPrintOf(session.model), undefined, { equals: readsAlike });
    /** In the picture after the words. */
    const told = afterwards(() => [session.told(), session.model.view()]);
    const seen = { model: peeking(session.model), told };
    createEffect(on(session.telling, () => view.leaveOne(), { defer: true }));
    createEffect(() => view.update(bayFrameOf(seen, ui, print())));
    createEffect(() => view.setTheme(themeNow(isDark())));
    return dispose;
  });
}
