/** The workshop: at the left the text of a scenario, at the right the car it describes. */
import { createSignal, type JSX, onCleanup, onMount, Show, untrack } from 'solid-js';
import type { DisplayUnits } from '../instruments/displayUnits';
import { word } from '../words/words';
import { CarSide } from './CarSide';
import type { CarLinks } from './carLinks';
import { EditorPane } from './EditorPane';
import { Findings } from './Findings';
import { FormStrip } from './FormStrip';
import { fileNameOf } from './fileNameOf';
import { keptDraft } from './keep/drafts';
import { disclose, isEnclosing } from './keep/enclosed';
import { readFile } from './keep/readFile';
import { templatesForLinks } from './keep/starts';
import { Notices } from './Notices';
import { type Example, Starts } from './Starts';
import { TextBar } from './TextBar';
import type { Work } from './work';

export interface WorkshopProps {
  readonly work: Work;
  readonly units: DisplayUnits;
  readonly links: CarLinks;
  /** Scenarios that ship, to look at and begin from. */
  readonly examples: readonly Example[];
}

export function Workshop(props: WorkshopProps): JSX.Element {
  const { written } = untrack(() => props.work);
  const [isStarting, setStarting] = createSignal(keptDraft() === null);
  const [trouble, setTrouble] = createSignal<string | null>(null);
  const [enclosed, setEnclosed] = createSignal<string | null>(null);
  const [isOver, setOver] = createSignal(false);

  const begin = (text: string): void => {
    setTrouble(null);
    setEnclosed(null);
    setStarting(false);
    written.begin(text);
    queueMicrotask(() => written.editor()?.focus());
  };
  const take = async (file: Blob | undefined): Promise<void> => {
    if (!file) return;
    const read = await readFile(file);
    if ('text' in read) begin(read.text);
    else setTrouble(word(`workshop.trouble.${read.trouble}`));
  };
  /** A text that a link brings replaces nothing before somebody has said so. */
  const lookAtLink = async (): Promise<void> => {
    const { hash, pathname, search } = location;
    if (!isEnclosing(hash)) return;
    const text = await disclose(hash, templatesForLinks);
    history.replaceState(history.state, '', pathname + search);
    if (text === null) setTrouble(word('workshop.trouble.badLink'));
    else if (written.text() === '' || written.text() === text) begin(text);
    else setEnclosed(text);
  };
  onMount(() => {
    const follow = (): void => void lookAtLink();
    follow();
    addEventListener('hashchange', follow);
    onCleanup(() => removeEventListener('hashchange', follow));
  });
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    void take(event.dataTransfer?.files[0]);
  };
  return (
    <main class="ws" id="main">
      <h1 class="vh">{word('workshop.title')}</h1>
      <section
        class="panel ws-text"
        classList={{ over: isOver() }}
        aria-label={word('workshop.text')}
        data-region
        tabIndex={-1}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
      >
        <TextBar
          written={written}
          isStarting={isStarting()}
          onStarting={setStarting}
          onFile={(file) => void take(file)}
          onTrouble={setTrouble}
        />
        <Notices
          written={written}
          trouble={trouble()}
          enclosed={enclosed()}
          onTake={begin}
          onLeave={() => setEnclosed(null)}
          onSeen={() => setTrouble(null)}
        />
        <Show when={isStarting()}>
          <Starts
            examples={props.examples}
            hasText={written.text() !== ''}
            onText={begin}
            onTrouble={setTrouble}
            onBack={() => setStarting(false)}
          />
        </Show>
        <div class="ws-work" hidden={isStarting()}>
          <FormStrip written={written} units={props.units} />
          <EditorPane written={written} fileName={() => fileNameOf(written.looked()?.form?.id)} />
          <Findings written={written} />
        </div>
      </section>
      <CarSide work={props.work} units={props.units} links={props.links} />
    </main>
  );
}
