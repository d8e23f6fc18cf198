/** What `card` and `label` were given, as SI; a wrong one is bad usage. */

import { PLACES } from '../../shared/schema/persons';
import {
  CARD_LIMITS,
  type CardInputs,
  CONVERTED_SHARE,
  LOOP_KINDS,
  outside,
} from '../export/card/cardInputs';
import { REFRIGERANT_IDS } from '../refrigerant/fluids';
import { parseQuantity, QuantityError } from '../units/quantity';
import type { QuantityKind } from '../units/unitTable';
import { word } from '../words/words';
import { UsageError } from './verb';

export interface WrittenCard {
  readonly charge: string;
  readonly refrigerant: string | undefined;
  readonly loop: string;
  readonly ambient: string;
  readonly humidity: string | undefined;
  readonly altitude: string | undefined;
  readonly can: string | undefined;
  readonly jurisdiction: string | undefined;
  readonly converted: boolean;
  readonly share: string | undefined;
}

export function cardArguments(written: WrittenCard): CardInputs {
  const converts = written.converted;
  const labelRefrigerant = oneOf('refrigerant', written.refrigerant ?? 'R-134a', REFRIGERANT_IDS);
  if (converts && labelRefrigerant !== 'R-12') throw new UsageError(word('verbs.card.onlyR12'));
  const inputs: CardInputs = {
    labelChargeKg: quantityOption('charge', written.charge, 'mass'),
    labelRefrigerant,
    loop: oneOf('loop', written.loop, LOOP_KINDS),
    converts,
    convertedShare:
      written.share === undefined ? CONVERTED_SHARE.usual : quantityOption('share', written.share, 'ratio'),
    ambientK: quantityOption('ambient', written.ambient, 'temperature'),
    relativeHumidity: quantityOption('humidity', written.humidity ?? '50%', 'ratio'),
    altitudeM: quantityOption('altitude', written.altitude ?? '0 m', 'length'),
    canNetKg: quantityOption('can', written.can ?? '340 g', 'mass'),
    jurisdiction: oneOf('jurisdiction', written.jurisdiction ?? 'check-first', PLACES),
  };
  const wrong = outside(inputs);
  if (wrong === null) return inputs;
  const { least, most } = CARD_LIMITS[wrong];
  throw new UsageError(word('verbs.card.outside', { name: wrong, least: String(least), most: String(most) }));
}

export function quantityOption(name: string, text: string, kind: QuantityKind): number {
  try {
    return parseQuantity(text, kind);
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    throw new UsageError(`--${name}: ${error.message}`);
  }
}

function oneOf<Known extends string>(name: string, given: string, known: readonly Known[]): Known {
  const found = known.find((one) => one === given);
  if (found === undefined)
    throw new UsageError(word('verbs.card.notKnown', { name, given, known: known.join(', ') }));
  return found;
}
