/** Said in the job as soon as this browser refused to keep it, until it has been read. */
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
