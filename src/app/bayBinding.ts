/**
 * Session to bay and back: view and channels become the bay's frame, its intents become commands or open a form. The bay
 * is loaded when the work screen stands; until then, and where it cannot be drawn, everything works from the panels.
 */
import { createEffect, createRoot } from 'solid-js';
import type { BayCallbacks, BayTheme, BayView, ZoomStep } from '../bay/bayApi';
import type { WorkUi } from '../panels/workUi';
import { word } from '../words/words';
import { bayFrameOf } from './bayFrameOf';
import { bayIntents } from './bayIntents';
import type { RunningSession } from './session';
import { settings } from './settings';

export interface BayHandle {
  zoom(step: ZoomStep): void;
  dispose(): void;
}

function themeNow(): BayTheme {
  const { look } = settings();
  if (look !== 'auto') return look;
  return matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light';
}

export function attachBay(host: HTMLElement, session: RunningSession, ui: WorkUi): BayHandle {
  let view: BayView | null = null;
  let gone = false;
  let stop: () => void = () => {};
  const callbacks: BayCallbacks = bayIntents(session, ui);
  const start = async (): Promise<void> => {
    const { createBay } = await import('../bay/bayView');
    if (gone) return;
    view = await createBay(host, session.model.layout, themeNow(), callbacks);
    if (gone) view.dispose();
    else {
      stop = follow(view, session, ui);
      ui.showPictures(view.closeUp);
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

function follow(view: BayView, session: RunningSession, ui: WorkUi): () => void {
  return createRoot((dispose) => {
    createEffect(() => view.update(bayFrameOf(session, ui)));
    createEffect(() => view.setTheme(themeNow()));
    return dispose;
  });
}
