/** Keys by region, and the trade's words said once. */
import { For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import { onEscape } from './onEscape';
import { TopBar } from './TopBar';

interface KeyGroup {
  readonly title: () => string;
  readonly rows: readonly (readonly [keys: readonly string[], what: () => string])[];
}

const GROUPS: readonly KeyGroup[] = [
  {
    title: () => word('help.group.anywhere'),
    rows: [
      [['F6', 'Shift F6'], () => word('help.key.f6')],
      [['Tab'], () => word('help.key.tab')],
      [['← →'], () => word('help.key.choice')],
      [['Esc'], () => word('help.key.esc')],
    ],
  },
  {
    title: () => word('help.group.bay'),
    rows: [
      [['← → ↑ ↓'], () => word('help.key.arrows')],
      [['Enter'], () => word('help.key.enter')],
      [['Space'], () => word('help.key.space')],
      [['C', 'K'], () => word('help.key.capCoupler')],
    ],
  },
  {
    title: () => word('help.group.can'),
    rows: [
      [['[', ']'], () => word('help.key.tilt')],
      [['Home', 'End'], () => word('help.key.ends')],
      [['+', '−'], () => word('help.key.valve')],
    ],
  },
  {
    title: () => word('help.group.clock'),
    rows: [
      [['← →'], () => word('help.key.clockArrows')],
      [['Space'], () => word('help.key.clockSpace')],
      [['R'], () => word('help.key.clockRun')],
    ],
  },
];

const GLOSSARY: readonly (readonly [term: () => string, text: () => string])[] = [
  [() => word('help.glossary.lowSide'), () => word('help.glossary.lowSideText')],
  [() => word('help.glossary.highSide'), () => word('help.glossary.highSideText')],
  [() => word('help.glossary.superheat'), () => word('help.glossary.superheatText')],
  [() => word('help.glossary.subcooling'), () => word('help.glossary.subcoolingText')],
  [() => word('help.glossary.orifice'), () => word('help.glossary.orificeText')],
  [() => word('help.glossary.valve'), () => word('help.glossary.valveText')],
  [() => word('help.glossary.inside'), () => word('help.glossary.insideText')],
];

function Keys(): JSX.Element {
  return (
    <div class="hcols">
      <For each={GROUPS}>
        {(group) => (
          <div>
            <h2>{group.title()}</h2>
            <table class="kt">
              <tbody>
                <For each={group.rows}>
                  {([keys, what]) => (
                    <tr>
                      <td>
                        <For each={keys}>{(key) => <kbd>{key}</kbd>}</For>
                      </td>
                      <td>{what()}</td>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </div>
        )}
      </For>
    </div>
  );
}

export interface HelpProps {
  readonly canGoBack: boolean;
  readonly onBack: () => void;
  readonly onHome: () => void;
  readonly onMenu: () => void;
}

export function Help(props: HelpProps): JSX.Element {
  onEscape(() => (props.canGoBack ? props.onBack() : props.onHome()));
  return (
    <div>
      <TopBar onHome={props.onHome} onMenu={props.onMenu}>
        <span class="sp" />
        <Show when={props.canGoBack}>
          <button type="button" class="btn sm" onClick={() => props.onBack()}>
            {word('help.back')}
          </button>
        </Show>
      </TopBar>
      <main class="pg" id="main">
        <h1>{word('help.title')}</h1>
        <div class="helpg">
          <section class="panel" aria-label={word('help.keys')} data-region tabIndex={-1}>
            <h2>{word('help.keys')}</h2>
            <p class="s mut">{word('help.keysSub')}</p>
            <Keys />
          </section>
          <section class="panel" aria-label={word('help.words')} data-region tabIndex={-1}>
            <h2>{word('help.words')}</h2>
            <dl class="gl">
              <For each={GLOSSARY}>
                {([term, text]) => (
                  <>
                    <dt>{term()}</dt>
                    <dd>{text()}</dd>
                  </>
                )}
              </For>
            </dl>
          </section>
        </div>
      </main>
    </div>
  );
}
