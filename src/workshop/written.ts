/**
 * What is written in the workshop and all that follows from it: kept a moment after each change, looked at by the worker a
 * moment later, and played through once nothing has changed for a while. Looked at anew where the page speaks otherwise.
 */
import { createEffect, createSignal, on, onCleanup, onMount, untrack } from 'solid-js';
import type { Problem } from '../../shared/schema/problem';
import type { Checked } from './checked';
import type { Wish } from './edit/wish';
import type { Editor, EditorMemory } from './editor/createEditor';
import type { Mark } from './editor/marks';
import { type Draft, keepDraft, keptDraft, onOtherTab, setAside } from './keep/drafts';
import { openDesk } from './reader/desk';
import type { Choices, Looked, Spoken } from './reader/protocol';
import type { Vocabulary } from './reader/vocabulary';

const LOOK_AFTER_MS = 180;
const KEEP_AFTER_MS = 500;
const PLAY_AFTER_MS = 2500;

export type Playing = 'no' | 'running' | 'done';

export function createWritten(spoken: () => Spoken) {
  const desk = openDesk(() => untrack(spoken));
  const tab = String(crypto.getRandomValues(new Uint32Array(1))[0]);
  const first = keptDraft();
  const [text, setText] = createSignal(first?.text ?? '');
  const [checked, setChecked] = createSignal<Checked | null>(null);
  const [looked, setLooked] = createSignal<Looked | null>(null);
  const [choices, setChoices] = createSignal<Choices | null>(null);
  const [vocabulary, setVocabulary] = createSignal<Vocabulary | null>(null);
  const [marks, setMarks] = createSignal<readonly Mark[]>([]);
  const [cursor, setCursor] = createSignal(0);
  const [playing, setPlaying] = createSignal<Playing>('no');
  const [keptAtMs, setKeptAtMs] = createSignal<number | null>(first?.atMs ?? null);
  const [isRefused, setRefused] = createSignal(false);
  const [failure, setFailure] = createSignal<string | null>(null);
  const [other, setOther] = createSignal<Draft | null>(null);
  let editor: Editor | null = null;
  let memory: EditorMemory | null = null;
  let lookTimer = 0;
  let keepTimer = 0;
  let playTimer = 0;

  const draft = (): Draft => ({ text: text(), atMs: Date.now(), tab });
  const keepNow = (): void => {
    clearTimeout(keepTimer);
    keepTimer = 0;
    if (text() === '') return;
    const now = draft();
    setRefused(!keepDraft(now));
    setKeptAtMs(now.atMs);
  };
  const show = (shown: string, problems: readonly Problem[], scenario: Checked['scenario']): void => {
    setChecked({ text: shown, scenario, problems });
    editor?.mark(problems);
  };
  const play = async (shown: string, scenario: Checked['scenario']): Promise<void> => {
    setPlaying('running');
    const problems = await desk.checkWhole(shown);
    if (shown !== text()) return;
    if (problems === null) {
      setPlaying('no');
      return;
    }
    show(shown, problems, scenario);
    setPlaying('done');
  };
  const learn = (): void => void desk.vocabulary().then(setVocabulary, (error) => setFailure(String(error)));
  const look = async (): Promise<void> => {
    const shown = text();
    if (!vocabulary()) learn();
    try {
      const found = await desk.look(shown);
      if (found === null || shown !== text()) return;
      setFailure(null);
      setLooked(found);
      if (found.choices) setChoices(found.choices);
      show(shown, found.problems, found.scenario);
      const { scenario } = found;
      clearTimeout(playTimer);
      if (scenario) playTimer = window.setTimeout(() => void play(shown, scenario), PLAY_AFTER_MS);
    } catch (error) {
      setFailure(String(error));
    }
  };
  const changed = (next: string): void => {
    if (next === text()) return;
    setText(next);
    setPlaying('no');
    desk.callOff();
    for (const timer of [lookTimer, keepTimer, playTimer]) clearTimeout(timer);
    lookTimer = window.setTimeout(() => void look(), LOOK_AFTER_MS);
    keepTimer = window.setTimeout(keepNow, KEEP_AFTER_MS);
  };
  /** A page that goes away keeps what the timer has not kept yet. */
  const leave = (): void => {
    if (keepTimer !== 0) keepNow();
  };
  onMount(() => {
    if (text() === '') learn();
    else void look();
    addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', leave);
  });
  createEffect(
    on(
      spoken,
      () => {
        desk.callOff();
        learn();
        if (text() !== '') void look();
      },
      { defer: true },
    ),
  );
  const endOther = onOtherTab((draft) => setOther(draft.text === text() ? null : draft));
  onCleanup(() => {
    leave();
    removeEventListener('pagehide', leave);
    document.removeEventListener('visibilitychange', leave);
    for (const timer of [lookTimer, keepTimer, playTimer]) clearTimeout(timer);
    endOther();
    desk.close();
  });

  return {
    text,
    checked,
    looked,
    choices,
    vocabulary,
    marks,
    cursor,
    playing,
    keptAtMs,
    isRefused,
    failure,
    other,
    changed,
    setMarks(found: readonly Mark[], at: number): void {
      setMarks(found);
      setCursor(at);
    },
    /** What the editor before knew; null where there was none. */
    memory: () => memory,
    attach(made: Editor | null): void {
      memory = editor?.memory() ?? memory;
      editor = made;
      const last = checked();
      if (last && last.text === text()) editor?.mark(last.problems);
    },
    editor: () => editor,
    /** Another text: what was here is the one before from now on. */
    begin(next: string): void {
      if (text() !== '' && text() !== next) setAside(draft());
      setOther(null);
      if (editor) editor.write(next);
      else changed(next);
      keepNow();
    },
    takeOther(): void {
      const there = other();
      if (there) this.begin(there.text);
    },
    keepOwn(): void {
      setOther(null);
      keepNow();
    },
    /** What was changed along with it; null where the text has no place for it. */
    async change(wish: Wish) {
      const asked = text();
      const found = await desk.change(asked, wish);
      if (!found || !editor || asked !== text()) return null;
      editor.change(found.changes);
      return found.along;
    },
  };
}

export type Written = ReturnType<typeof createWritten>;
