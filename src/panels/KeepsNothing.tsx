/** This browser refused to keep something: a line on the shelf, and one in the job until it has been read. */
import { type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { Icon } from './Icon';
import type { WorkUi } from './workUi';

export function KeepsNothing(props: { readonly ui: WorkUi }): JSX.Element {
  return (
    <div role="status">
      <Show when={props.ui.session.keepsNothing() && !props.ui.refusalRead()}>
        <p class="slim-note keeps-nothing">
          <Icon name="lock" size={18} />
          <span>{word('app.storage.inBay')}</span>
          <button type="button" class="btn sm" onClick={() => props.ui.readRefusal()}>
            {word('app.storage.read')}
          </button>
        </p>
      </Show>
    </div>
  );
}

export function ShelfKeepsNothing(): JSX.Element {
  return (
    <p class="slim-note" role="status">
      <Icon name="lock" size={18} />
      {word('app.storage.refused')}
    </p>
  );
}
