/** What has to be said before going on: a text from a link, another tab, a file that is none. */
import { type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import type { Written } from './written';

const TITLE = /^title:\s*["']?([^\n"'#]{1,60})/m;
const titleOf = (text: string): string => TITLE.exec(text)?.[1].trim() ?? word('workshop.notice.noTitle');

export function Notices(props: {
  readonly written: Written;
  readonly trouble: string | null;
  readonly enclosed: string | null;
  readonly onTake: (text: string) => void;
  readonly onLeave: () => void;
  readonly onSeen: () => void;
}): JSX.Element {
  return (
    <div class="ws-notices" role="status">
      <Show when={props.enclosed}>
        {(text) => (
          <div class="ws-notice">
            <p>{word('workshop.notice.enclosed', { title: titleOf(text()) })}</p>
            <button type="button" class="btn sm pri" onClick={() => props.onTake(text())}>
              {word('workshop.notice.take')}
            </button>
            <button type="button" class="btn sm" onClick={() => props.onLeave()}>
              {word('workshop.notice.leave')}
            </button>
          </div>
        )}
      </Show>
      <Show when={props.written.other()}>
        <div class="ws-notice">
          <p>{word('workshop.notice.otherTab')}</p>
          <button type="button" class="btn sm" onClick={() => props.written.takeOther()}>
            {word('workshop.notice.takeOther')}
          </button>
          <button type="button" class="btn sm" onClick={() => props.written.keepOwn()}>
            {word('workshop.notice.keepOwn')}
          </button>
        </div>
      </Show>
      <Show when={props.trouble}>
        <div class="ws-notice">
          <p>{props.trouble}</p>
          <button type="button" class="btn sm" onClick={() => props.onSeen()}>
            {word('workshop.notice.seen')}
          </button>
        </div>
      </Show>
      <Show when={props.written.failure()}>
        {(why) => (
          <div class="ws-notice">
            <p>{word('workshop.notice.failed', { why: why() })}</p>
          </div>
        )}
      </Show>
    </div>
  );
}
