/** Over the text: what it is called, that it is kept, and the ways in and out of the page. */
import { createSignal, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { fileNameOf } from './fileNameOf';
import { enclose, MOST_LINK_LETTERS } from './keep/enclosed';
import { templatesForLinks } from './keep/starts';
import { saveText } from './saveText';
import type { Written } from './written';

const clockOf = (ms: number): string => {
  const two = (value: number): string => String(value).padStart(2, '0');
  const at = new Date(ms);
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
};

export interface TextBarProps {
  readonly written: Written;
  readonly isStarting: boolean;
  readonly onStarting: (is: boolean) => void;
  readonly onFile: (file: File | undefined) => void;
  readonly onTrouble: (trouble: string | null) => void;
}

export function TextBar(props: TextBarProps): JSX.Element {
  const { written } = props;
  const [said, setSaid] = createSignal('');
  let input: HTMLInputElement | undefined;
  const name = (): string => fileNameOf(written.looked()?.form?.id);
  const has = (): boolean => written.text() !== '';
  const share = async (): Promise<void> => {
    const { origin, pathname } = location;
    const link = `${origin}${pathname}?workshop=1${await enclose(written.text(), templatesForLinks)}`;
    if (link.length > MOST_LINK_LETTERS) {
      const told = { count: String(link.length), most: String(MOST_LINK_LETTERS) };
      props.onTrouble(word('workshop.trouble.tooLong', told));
      return;
    }
    try {
      await navigator.clipboard.writeText(link);
      setSaid(word('workshop.bar.copied'));
    } catch {
      props.onTrouble(word('workshop.trouble.noClipboard', { link }));
    }
  };
  const kept = (): string => {
    if (said() !== '') return said();
    if (written.isRefused()) return word('workshop.bar.notKept');
    const at = written.keptAtMs();
    return at === null ? '' : word('workshop.bar.kept', { time: clockOf(at) });
  };
  return (
    <div class="ws-bar">
      <span class="ws-name">
        <b>{has() ? name() : word('workshop.bar.nothingYet')}</b>
        <span class="xs mut" role="status">
          {has() ? kept() : ''}
        </span>
      </span>
      <span class="ws-acts">
        <button
          type="button"
          class="btn sm"
          aria-expanded={props.isStarting}
          onClick={() => props.onStarting(!props.isStarting || !has())}
        >
          {word('workshop.bar.start')}
        </button>
        <button type="button" class="btn sm" onClick={() => input?.click()}>
          {word('workshop.bar.open')}
        </button>
        <input
          ref={input}
          type="file"
          hidden
          aria-label={word('workshop.bar.openFile')}
          accept=".yaml,.yml,text/yaml,application/yaml"
          onChange={(event) => {
            props.onFile(event.currentTarget.files?.[0]);
            event.currentTarget.value = '';
          }}
        />
        <Show when={has()}>
          <button type="button" class="btn sm" onClick={() => saveText(name(), written.text())}>
            {word('workshop.bar.save')}
          </button>
          <button type="button" class="btn sm" onClick={() => void share()}>
            {word('workshop.bar.share')}
          </button>
        </Show>
      </span>
    </div>
  );
}
