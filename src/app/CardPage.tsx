/** The car card and the conversion label: what is typed in at the left, the page to print at the right. */
import { createSignal, type JSX, Match, Switch } from 'solid-js';
import '../export/card/card.css';
import './styles/cardPage.css';
import { Segmented } from '../panels/controls';
import { TopBar } from '../panels/TopBar';
import { word } from '../words/words';
import { CardOfCar } from './CardOfCar';
import { LabelOfCar } from './LabelOfCar';

type Sheet = 'card' | 'label';

export default function CardPage(props: {
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}): JSX.Element {
  const [sheet, setSheet] = createSignal<Sheet>('card');
  return (
    <>
      <TopBar onHome={props.onHome} onHelp={props.onHelp} onMenu={props.onMenu} />
      <main class="pg card-page" id="main">
        <div class="card-bar row wrap" data-region tabIndex={-1}>
          <h1>{sheet() === 'card' ? word('carCard.title') : word('carCard.label.title')}</h1>
          <span class="sp" />
          <Segmented
            label={word('carCard.form.which')}
            options={[
              { value: 'card' as Sheet, label: word('carCard.title') },
              { value: 'label' as Sheet, label: word('carCard.label.title') },
            ]}
            value={sheet()}
            onChoose={setSheet}
          />
          <button type="button" class="btn pri" onClick={() => print()}>
            {word('carCard.form.print')}
          </button>
        </div>
        <Switch>
          <Match when={sheet() === 'card'}>
            <CardOfCar />
          </Match>
          <Match when={sheet() === 'label'}>
            <LabelOfCar />
          </Match>
        </Switch>
      </main>
    </>
  );
}
