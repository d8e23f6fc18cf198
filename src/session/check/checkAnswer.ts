/**
 * The answer against what is hidden: it names each hidden fault, or that nothing is wrong. A charge or a refrigerant that
 * is not the label's may be the cause without a fault in the list, so then any cause is left to the author.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { vehicleOf } from '../../loop/car/vehicles';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { parseQuantity } from '../../units/quantity';
import { word } from '../../words/words';
import type { Findings } from './findings';

/** A scale shows no less. */
const NEAR_KG = 0.001;
const PATH = ['answer', 'causes'];

export function checkAnswer(data: ScenarioData, findings: Findings): void {
  const { causes } = data.answer;
  const saysNothing = causes.includes(NOTHING_WRONG);
  if (data.faults.length === 0) {
    if (!(saysNothing && causes.length === 1) && isByLabel(data))
      findings.error(PATH, 'SCN124', word('check.nothingHidden'));
    return;
  }
  if (saysNothing) findings.error(PATH, 'SCN124', word('check.somethingHidden'));
  for (const id of new Set(data.faults.map(({ fault }) => fault)))
    if (!causes.includes(id)) findings.error(PATH, 'SCN124', word('check.unanswered', { id }));
}

/** What was taken out on purpose is no fault of the car's. */
function isByLabel({ vehicle, contents }: ScenarioData): boolean {
  const { label } = vehicleOf(vehicle);
  if (contents.refrigerant !== label.refrigerant) return false;
  return (
    contents.state === 'evacuated' ||
    Math.abs(parseQuantity(contents.charge, 'mass') - label.charge) < NEAR_KG
  );
}
