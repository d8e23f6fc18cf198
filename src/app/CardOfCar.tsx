/** The form of the car card and its page, reckoned anew a moment after something is typed. */
import { createEffect, createSignal, For, type JSX, onCleanup, Show } from 'solid-js';
import { PLACES, type Place } from '../../shared/schema/persons';
import { carCard } from '../export/card/carCard';
import { LOOP_KINDS, type LoopKind } from '../export/card/cardInputs';
import { sheetElement } from '../export/card/sheetElement';
import { REFRIGERANT_IDS } from '../refrigerant/fluids';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import { isWordId, say, word } from '../words/words';
import { Choice, Typed } from './cardFields';
import { cardReckoning } from './cardReckoning';
import { type CardTyped, FIRST_TYPED, readTyped, type TypedQuantity, typedName } from './cardTyped';

const PAUSE_MS = 300;

const placeName = (id: Place): string => {
  const place = `carCard.law.place.${id}`;
  return isWordId(place) ? say({ id: place } as { id: typeof place }) : id;
};
const loopName = (loop: LoopKind): string =>
  loop === 'orifice-tube' ? word('carCard.typed.orifice-tube') : word('carCard.typed.expansion-valve');

export function CardOfCar(): JSX.Element {
  const [typed, setTyped] = createSignal<CardTyped>(FIRST_TYPED);
  const { reckoned, trouble, ask, refuse } = cardReckoning();
  const change = (part: Partial<CardTyped>): void => void setTyped({ ...typed(), ...part });
  createEffect(() => {
    const read = readTyped(typed());
    if ('wrong' in read) {
      refuse(read.wrong);
      return;
    }
    const later = setTimeout(() => ask(read.inputs), PAUSE_MS);
    onCleanup(() => clearTimeout(later));
  });
  const quantity = (field: TypedQuantity): JSX.Element => (
    <Typed name={typedName(field)} value={typed()[field]} onType={(text) => change({ [field]: text })} />
  );
  return (
    <>
      <section class="panel card-form" aria-label={word('carCard.form.typed')} data-region tabIndex={-1}>
        <p class="s mut">{word('carCard.form.units')}</p>
        {quantity('charge')}
        <Choice
          name={word('carCard.form.refrigerant')}
          options={REFRIGERANT_IDS.map((id) => [id, id])}
          value={typed().refrigerant}
          onChoose={(refrigerant) => change({ refrigerant: refrigerant as RefrigerantId })}
        />
        <Show when={typed().refrigerant === 'R-12'}>
          <label class="row">
            <input
              type="checkbox"
              checked={typed().converts}
              onChange={(event) => change({ converts: event.currentTarget.checked })}
            />
            {word('carCard.form.converts')}
          </label>
          <Show when={typed().converts}>{quantity('share')}</Show>
        </Show>
        <Choice
          name={word('carCard.form.loop')}
          options={LOOP_KINDS.map((id) => [id, loopName(id)])}
          value={typed().loop}
          onChoose={(loop) => change({ loop: loop as LoopKind })}
        />
        <For each={['ambient', 'humidity', 'altitude', 'can'] as const}>{(field) => quantity(field)}</For>
        <Choice
          name={word('carCard.form.where')}
          options={PLACES.map((id) => [id, placeName(id)])}
          value={typed().jurisdiction}
          onChoose={(jurisdiction) => change({ jurisdiction: jurisdiction as Place })}
        />
      </section>
      <section class="card-sheet" aria-label={word('carCard.form.page')} data-region tabIndex={-1}>
        <p class="panel card-trouble" role="status" hidden={reckoned() !== null && trouble() === null}>
          {trouble() ?? word('carCard.form.working')}
        </p>
        <Show when={reckoned()}>{(made) => sheetElement(carCard(made().inputs, made().figures))}</Show>
      </section>
    </>
  );
}
