/**
 * How a trainee stands in a scenario: what the place allows this person on this car, and whether the person is trained for
 * it. None of it changes in a session. Refrigerants that burn (R-1234yf) ask for a certified person, a high-voltage
 * compressor for one trained for that, wherever the car stands: trade practice, no source.
 */
import type { Act } from '../../../shared/schema/jurisdiction';
import type { Person, Place } from '../../../shared/schema/persons';
import type { ScenarioData } from '../../../shared/schema/scenario';
import { warmingFactor } from '../../plant/warmingFactor';
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import { isTrained } from './isTrained';
import { jurisdictionOf } from './jurisdictions';

/** What is asked of the law, by the middle of its signal; `known` tells whether any place was told. */
const ASKED: Readonly<Record<string, Act>> = {
  mayService: 'service',
  mayBuyCan: 'buy-can',
  mayCharge: 'charge',
  mayTopUp: 'top-up',
  mayTopUpLeaky: 'fill-leaking',
  mayRecover: 'recover',
  mayHandleR12: 'handle-r12',
  mayConvert: 'convert',
  mayChangeGas: 'change-gas',
};

/** Signal ids, each on or off. */
export type Standing = Readonly<Record<string, boolean>>;

export function standingOf({
  jurisdiction = 'check-first',
  person,
  vehicle,
  contents,
  bench,
}: ScenarioData): Standing {
  const put = bench.refrigerant ?? contents.refrigerant;
  const isOther = put !== contents.refrigerant;
  const isR12 = contents.refrigerant === 'R-12';
  return {
    ...lawOf(jurisdiction, person),
    'law.mayChangeGas': mayChangeGas(jurisdiction, person, contents.refrigerant, put),
    'law.putsR12': put === 'R-12',
    'law.convertsR12': isOther && isR12,
    'law.changesGas': isOther && !isR12,
    'person.certified': person !== 'owner',
    'person.highVoltageTrained': person === 'high-voltage-trained',
    'person.trainedForCar': isTrained(person, vehicle),
  };
}

/** Of a session without a scenario: no place is told, and an owner works on a car that needs no training. */
export const NO_STANDING: Standing = {
  ...lawOf('check-first', 'owner'),
  'law.putsR12': false,
  'law.convertsR12': false,
  'law.changesGas': false,
  'person.certified': false,
  'person.highVoltageTrained': false,
  'person.trainedForCar': true,
};

function lawOf(place: Place, person: Person): Standing {
  const { known, acts } = jurisdictionOf(place);
  const may = Object.entries(ASKED).map(([id, act]) => [`law.${id}`, acts[act].who.includes(person)]);
  return { 'law.known': known, ...Object.fromEntries(may) };
}

/** A rule that is only against more warming leaves any other gas to whoever may charge. */
function mayChangeGas(place: Place, person: Person, held: RefrigerantId, put: RefrigerantId): boolean {
  const { acts } = jurisdictionOf(place);
  const { who, against } = acts['change-gas'];
  const isLet = against === 'more-warming' && warmingFactor(put) <= warmingFactor(held);
  return (isLet ? acts.charge.who : who).includes(person);
}
