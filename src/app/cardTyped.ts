/** What is typed in on the page of the car card, as text, and read: SI, or what is wrong with it. */

import type { Place } from '../../shared/schema/persons';
import {
  CARD_LIMITS,
  type CardInputs,
  CONVERTED_SHARE,
  type LimitedInput,
  type LoopKind,
  outside,
} from '../export/card/cardInputs';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import { decimalPoint } from '../units/decimalPoint';
import { formatNumber, formatQuantity } from '../units/format';
import { parseQuantity } from '../units/quantity';
import type { QuantityKind } from '../units/unitTable';
import { word } from '../words/words';

export interface CardTyped {
  readonly charge: string;
  readonly refrigerant: RefrigerantId;
  readonly loop: LoopKind;
  readonly converts: boolean;
  readonly share: string;
  readonly ambient: string;
  readonly humidity: string;
  readonly altitude: string;
  readonly can: string;
  readonly jurisdiction: Place;
}

export type TypedQuantity = 'charge' | 'share' | 'ambient' | 'humidity' | 'altitude' | 'can';

export const FIRST_TYPED: CardTyped = {
  charge: '800 g',
  refrigerant: 'R-134a',
  loop: 'orifice-tube',
  converts: false,
  share: `${100 * CONVERTED_SHARE.usual}%`,
  ambient: '30 degC',
  humidity: '50%',
  altitude: '0 m',
  can: '340 g',
  jurisdiction: 'check-first',
};

const KIND_OF: Readonly<Record<TypedQuantity, QuantityKind>> = {
  charge: 'mass',
  share: 'ratio',
  ambient: 'temperature',
  humidity: 'ratio',
  altitude: 'length',
  can: 'mass',
};

const TYPED_AS: Readonly<Record<LimitedInput, TypedQuantity>> = {
  labelChargeKg: 'charge',
  convertedShare: 'share',
  ambientK: 'ambient',
  relativeHumidity: 'humidity',
  altitudeM: 'altitude',
  canNetKg: 'can',
};

export const typedName = (field: TypedQuantity): string =>
  ({
    charge: word('carCard.form.charge'),
    share: word('carCard.form.share'),
    ambient: word('carCard.form.ambient'),
    humidity: word('carCard.form.humidity'),
    altitude: word('carCard.form.altitude'),
    can: word('carCard.form.can'),
  })[field];

export type ReadTyped = { readonly inputs: CardInputs } | { readonly wrong: string };

export function readTyped(typed: CardTyped): ReadTyped {
  const values = {} as Record<TypedQuantity, number>;
  for (const [field, kind] of Object.entries(KIND_OF) as [TypedQuantity, QuantityKind][]) {
    const value = quantityOr(typed[field], kind);
    if (value === undefined) {
      const wrong = { name: typedName(field), example: FIRST_TYPED[field] };
      return { wrong: word('carCard.form.notQuantity', wrong) };
    }
    values[field] = value;
  }
  const inputs: CardInputs = {
    labelChargeKg: values.charge,
    labelRefrigerant: typed.refrigerant,
    loop: typed.loop,
    converts: typed.converts && typed.refrigerant === 'R-12',
    convertedShare: values.share,
    ambientK: values.ambient,
    relativeHumidity: values.humidity,
    altitudeM: values.altitude,
    canNetKg: values.can,
    jurisdiction: typed.jurisdiction,
  };
  const limited = outside(inputs);
  if (limited === null) return { inputs };
  return { wrong: outsideWords(limited, typed) };
}

/** Both ends of what may be typed; a temperature in the scale it was typed in. */
function outsideWords(limited: LimitedInput, typed: CardTyped): string {
  const field = TYPED_AS[limited];
  const { least, most } = CARD_LIMITS[limited];
  const write = (value: number): string => limitWords(value, KIND_OF[field], /F\s*$/.test(typed[field]));
  return word('carCard.form.outside', { name: typedName(field), least: write(least), most: write(most) });
}

function limitWords(value: number, kind: QuantityKind, isFahrenheit: boolean): string {
  if (kind === 'mass') return formatQuantity(value, 'g', 1);
  if (kind === 'temperature') return formatQuantity(value, isFahrenheit ? 'degF' : 'degC', 1);
  return kind === 'ratio' ? `${formatNumber(100 * value, 1)}%` : `${formatNumber(value, 1)} m`;
}

export function quantityOr(text: string, kind: QuantityKind): number | undefined {
  try {
    return parseQuantity(decimalPoint(text), kind);
  } catch {
    return undefined;
  }
}
