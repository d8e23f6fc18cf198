/** The place of the text, and beneath it how to leave it by keys. */
import { type JSX, onCleanup, onMount } from 'solid-js';
import { word } from '../words/words';
import { createEditor } from './editor/createEditor';
import { saveText } from './saveText';
import type { Written } from './written';

export function EditorPane(props: {
  readonly written: Written;
  readonly fileName: () => string;
}): JSX.Element {
  let host: HTMLDivElement | undefined;
  onMount(() => {
    if (!host) return;
    const { written } = props;
    const editor = createEditor(host, {
      text: written.text(),
      memory: written.memory(),
      known: () => {
        const vocabulary = written.vocabulary();
        const vehicle = written.looked()?.form?.vehicle ?? '';
        return vocabulary && { vocabulary, choices: written.choices(), vehicle };
      },
      onText: written.changed,
      onMarks: written.setMarks,
      onSave: () => saveText(props.fileName(), written.text()),
    });
    written.attach(editor);
    onCleanup(() => {
      written.attach(null);
      editor.destroy();
    });
  });
  return (
    <div class="ws-editor">
      <div class="ws-frame">
        <div class="ws-host" ref={host} />
      </div>
      <p class="xs mut ws-keys">{word('workshop.keys')}</p>
    </div>
  );
}
