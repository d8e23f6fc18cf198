/** Offers while writing: what could stand at the cursor, with what it is beside it. */
import { autocompletion, type Completion, type CompletionContext } from '@codemirror/autocomplete';
import type { Extension } from '@codemirror/state';
import { isWordId, say } from '../../words/words';
import { type Known, type Offer, offersAt } from '../text/offers';
import { placeAt } from '../text/placeAt';

/** `known` is null until the worker has said what there is. */
export function completing(known: () => Known | null): Extension {
  const source = ({ state, pos, explicit }: CompletionContext) => {
    const there = known();
    if (!there) return null;
    const text = state.doc.toString();
    const place = placeAt(text, pos);
    const written = text.slice(place.from, pos);
    if (!explicit && written === '' && place.writes === 'key') return null;
    const offers = offersAt(text, place, written, there);
    if (!offers || offers.list.length === 0) return null;
    return { from: offers.from, options: offers.list.map(completionOf), validFor: /^[\w .%°/-]*$/ };
  };
  return autocompletion({ override: [source], icons: false, closeOnBlur: true });
}

function completionOf({ insert, shown, note, isKey }: Offer): Completion {
  const told = note === undefined ? '' : isKey ? keyNote(note) : note;
  return {
    label: shown ?? insert,
    apply: insert,
    ...(isKey ? (told === '' ? {} : { info: told }) : { detail: told }),
    type: isKey ? 'key' : 'value',
  };
}

/** What a key is, where a word says it: `weather.temperature` is `workshop.key.weather-temperature`. */
function keyNote(id: string): string {
  const wordId = `workshop.key.${id.replaceAll('[]', '').replaceAll('.', '-')}`;
  return isWordId(wordId) ? say({ id: wordId }) : '';
}
