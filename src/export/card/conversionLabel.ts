/**
 * The label of a car converted from R-12 to R-134a: what 40 CFR 82 subpart G asks of it, in our own words: who did it and
 * where, when, trade name, number and amount of the refrigerant, kind, maker and amount of the lubricant, and whether it
 * harms ozone or burns. Sky blue stands for R-134a (from memory). What is not typed in stays a line to write on. The old
 * charge is not on it: nobody may read it as the car's.
 */
import { formatQuantity } from '../../units/format';
import { word } from '../../words/words';
import { blank, type Leaf, leaf, list } from './leaf';
import { mass } from './written';

export interface LabelInputs {
  readonly chargeKg: number;
  readonly oil: string;
  readonly oilM3: number;
  readonly oilMaker?: string;
  readonly tradeName?: string;
  readonly by?: string;
  readonly company?: string;
  readonly address?: string;
  readonly date?: string;
}

/** The one refrigerant such a label is printed for. */
export const CONVERTED_TO = 'R-134a';

export function conversionLabel(inputs: LabelInputs): Leaf {
  const { chargeKg, oil, oilM3 } = inputs;
  const filled = (name: string, text: string | undefined): Leaf =>
    text === undefined || text.trim() === ''
      ? blank(name)
      : leaf('div', 'blank filled', leaf('b', '', text), leaf('span', '', name));
  const label = leaf(
    'section',
    'sticker',
    leaf('h2', '', word('carCard.label.head', { refrigerant: CONVERTED_TO })),
    leaf('p', '', word('carCard.label.only', { refrigerant: CONVERTED_TO })),
    leaf(
      'div',
      'blanks',
      filled(
        word('carCard.label.refrigerant'),
        word('carCard.label.refrigerantText', { refrigerant: CONVERTED_TO }),
      ),
      filled(word('carCard.label.charge'), mass(chargeKg)),
      filled(word('carCard.label.trade'), inputs.tradeName),
      filled(word('carCard.label.oil'), oil),
      filled(word('carCard.label.oilAmount'), formatQuantity(oilM3, 'mL', 1)),
      filled(word('carCard.label.oilMaker'), inputs.oilMaker),
      filled(word('carCard.label.by'), inputs.by),
      filled(word('carCard.label.company'), inputs.company),
      filled(word('carCard.label.date'), inputs.date),
    ),
    leaf('div', 'blanks wide', filled(word('carCard.label.address'), inputs.address)),
    leaf('p', '', word('carCard.label.harm')),
  );
  return leaf(
    'article',
    'sheet conversion',
    leaf('h1', '', word('carCard.label.title')),
    label,
    leaf(
      'section',
      'notes',
      leaf('h2', '', word('carCard.label.noteTitle')),
      list('', [
        word('carCard.label.note.a'),
        word('carCard.label.note.b'),
        word('carCard.label.note.c'),
        word('carCard.label.note.d'),
      ]),
      leaf('p', 'small', word('carCard.label.source')),
    ),
  );
}
