/** What if: the actions of a finished session as pills that can be left out, moved and changed, and what comes of it. */
import { createMemo, For, type JSX, onCleanup, onMount, Show } from 'solid-js';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import type { DebriefAction, DebriefModel } from './debriefModel';
import { keepFocusWithin } from './focusKeeping';
import { Icon } from './Icon';
import { WhatIfAction } from './WhatIfAction';
import { WhatIfAnswer } from './WhatIfAnswer';
import { WhatIfForm } from './WhatIfForm';
import type { WhatIfModel } from './whatIfModel';

export interface WhatIfProps {
  readonly debrief: DebriefModel;
  readonly whatIf: WhatIfModel;
  readonly onShow: (seconds: number) => void;
}

export function WhatIf(props: WhatIfProps): JSX.Element {
  const { chosen, setChosen } = props.debrief.reading;
  // the same actions when the ghosts have weighed what was read: what is focused stays
  const actions = createMemo(() => props.debrief.data.actions, undefined, {
    equals: (a, b) => a.length === b.length,
  });
  const action = (): DebriefAction | undefined => actions().find(({ logNumber }) => logNumber === chosen());
  /** The last action before the first step that differs; of those at one step the one that was changed. */
  const partsAt = (): number | null => {
    const step = props.whatIf.apartStep();
    if (step === null) return null;
    const before = actions().filter((one) => one.step < step);
    const last = before.filter((one) => one.step === before.at(-1)?.step);
    const changed = new Set(props.whatIf.edits().map(({ number }) => number));
    return (last.find(({ logNumber }) => changed.has(logNumber)) ?? last.at(-1))?.logNumber ?? null;
  };
  const choose = (one: DebriefAction): void => {
    setChosen(one.logNumber);
    props.onShow(one.step / STEPS_PER_SECOND);
  };
  let box: HTMLElement | undefined;
  onMount(() => box && onCleanup(keepFocusWithin(box)));
  return (
    <section ref={box} class="panel wi" aria-label={word('debrief.whatIf.title')} data-region tabIndex={-1}>
      <div class="row wrap">
        <h2>{word('debrief.whatIf.title')}</h2>
        <span class="s mut">{word('debrief.whatIf.note')}</span>
        <span class="sp" />
        <Show when={props.whatIf.edits().length > 0}>
          <button type="button" class="btn sm" onClick={() => props.whatIf.setEdits([])}>
            <Icon name="back" size={16} />
            {word('debrief.whatIf.asItWas')}
          </button>
        </Show>
      </div>
      <div class="acts" role="group" aria-label={word('debrief.whatIf.actions')}>
        <For each={actions()}>
          {(one) => (
            <WhatIfAction
              debrief={props.debrief}
              whatIf={props.whatIf}
              action={one}
              isChosen={chosen() === one.logNumber}
              parts={partsAt() === one.logNumber}
              onChoose={() => choose(one)}
            />
          )}
        </For>
      </div>
      <Show when={action()} keyed>
        {(one) => <WhatIfForm debrief={props.debrief} whatIf={props.whatIf} action={one} />}
      </Show>
      <WhatIfAnswer debrief={props.debrief} whatIf={props.whatIf} onShow={props.onShow} />
    </section>
  );
}
