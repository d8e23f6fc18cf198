/** The right side of the workshop: what the car does that the text describes, what it looks like, and ways to try it. */
import { createSignal, For, type JSX, Match, Show, Switch, untrack } from 'solid-js';
import type { ScenarioData } from '../../shared/schema/scenario';
import type { DisplayUnits } from '../instruments/displayUnits';
import type { Mode } from '../session/corePort';
import { word } from '../words/words';
import { CarPanel } from './car/CarPanel';
import { Choice } from './car/Choice';
import type { CarLinks } from './carLinks';
import { ProofPanel } from './proof/ProofPanel';
import { SuspectsPanel } from './proof/SuspectsPanel';
import type { Work } from './work';

export interface CarSideProps {
  readonly work: Work;
  readonly units: DisplayUnits;
  readonly links: CarLinks;
}

type Tab = 'car' | 'suspects' | 'proof';

const MODES: readonly Mode[] = ['practice', 'assessed', 'explore'];
const modeName = (mode: Mode): string =>
  mode === 'explore'
    ? word('app.mode.explore')
    : mode === 'practice'
      ? word('app.mode.practice')
      : word('app.mode.assessed');

function Play(props: { readonly ready: ScenarioData | null; readonly links: CarLinks }): JSX.Element {
  const [mode, setMode] = createSignal<Mode>('practice');
  const [isRefused, setRefused] = createSignal(false);
  /** A second press while the first is still making ready would open a second session. */
  let isOpening = false;
  const play = async (): Promise<void> => {
    if (!props.ready || isOpening) return;
    isOpening = true;
    try {
      setRefused(!(await props.links.play(props.ready, mode())));
    } finally {
      isOpening = false;
    }
  };
  return (
    <div class="row wrap wc-play">
      <select
        class="sm"
        aria-label={word('workshopCar.play.mode')}
        value={mode()}
        onChange={(event) => setMode(MODES.find((one) => one === event.currentTarget.value) ?? 'practice')}
      >
        <For each={MODES}>{(one) => <option value={one}>{modeName(one)}</option>}</For>
      </select>
      <button
        type="button"
        class="btn sm pri"
        disabled={props.ready === null}
        title={props.ready === null ? word('workshopCar.play.wait') : undefined}
        onClick={() => void play()}
      >
        {word('workshopCar.play.open')}
      </button>
      <Show when={isRefused()}>
        <p class="s" role="alert">
          {word('workshopCar.play.refused')}
        </p>
      </Show>
    </div>
  );
}

/** Who plays for a while and comes back finds it as it was. */
const [tab, setTab] = createSignal<Tab>('car');

export function CarSide(props: CarSideProps): JSX.Element {
  const { ready, car, suspects, proofs } = untrack(() => props.work);
  return (
    <section class="ws-car" aria-label={word('workshopCar.side')} data-region tabIndex={-1}>
      <div class="row wrap wc-head">
        <Choice<Tab>
          label={word('workshopCar.tabs')}
          options={[
            { value: 'car', label: word('workshopCar.tab.car') },
            { value: 'suspects', label: word('workshopCar.tab.suspects') },
            { value: 'proof', label: word('workshopCar.tab.proof') },
          ]}
          value={tab()}
          onChoose={setTab}
        />
        <span class="sp" />
        <Play ready={ready()} links={props.links} />
      </div>
      <Switch>
        <Match when={tab() === 'car'}>
          <CarPanel car={car} isStale={ready() === null} units={props.units} />
        </Match>
        <Match when={tab() === 'suspects'}>
          <SuspectsPanel suspects={suspects} ready={ready()} names={props.links.names} units={props.units} />
        </Match>
        <Match when={tab() === 'proof'}>
          <ProofPanel proving={proofs} ready={ready()} links={props.links} />
        </Match>
      </Switch>
    </section>
  );
}
