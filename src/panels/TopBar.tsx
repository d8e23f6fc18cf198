/** The bar at the top of every screen: mark, title, what belongs to the screen, help and menu. */
import { type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { IconButton } from './controls';
import { Icon, PortsMark } from './Icon';
import { wayBack } from './wayBack';

export interface TopBarProps {
  readonly title?: string;
  readonly onHome: () => void;
  readonly onHelp?: () => void;
  readonly onMenu?: () => void;
  readonly children?: JSX.Element;
}

export function TopBar(props: TopBarProps): JSX.Element {
  return (
    <header class="top" data-region tabIndex={-1}>
      <button type="button" class="mark" aria-label={word('app.toShelf')} onClick={() => props.onHome()}>
        <PortsMark />
        <b>{word('app.title')}</b>
      </button>
      <Show when={wayBack()}>
        {(back) => (
          <button
            type="button"
            class="btn sm way"
            aria-label={word('app.toWorkshop')}
            onClick={() => back()()}
          >
            <Icon name="back" size={18} />
            <span class="hide-m hide-s">{word('app.workshop')}</span>
          </button>
        )}
      </Show>
      {props.title ? <span class="ttl">{props.title}</span> : null}
      {props.children ?? <span class="sp" />}
      {props.onHelp ? (
        <IconButton icon="help" class="hide-s hide-f" label={word('app.help')} onPress={props.onHelp} />
      ) : null}
      {props.onMenu ? <IconButton icon="menu" label={word('app.menu')} onPress={props.onMenu} /> : null}
    </header>
  );
}
