/**
 * The answer against what is hidden: it names each hidden fault, or that nothing is wrong, and no part that mends nothing
 * while a fault waits for another. A charge or a refrigerant that is not the label's may be the cause without a fault in the
 * list, so then any cause is left to the author.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { faultOf } from '../../faults/registry';
import type { Layout } from '../../layout/layout';
import { vehicleOf } from '../../loop/car/vehicles';
import { mends, NOTHING_WRONG } from '../../plant/faultBook';
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

/**
 * A part beside those that mend is no slip: a new drier goes with an opened loop. A part that mends nothing is one where a
 * fault is left that only a new part takes away, and the answer has none of those parts.
 */
export function checkAnswerParts(
  { answer, faults }: ScenarioData,
  layout: Layout,
  replaceable: readonly string[],
  findings: Findings,
): void {
  const hidden = faults.map(({ fault, site }) => ({ id: fault, ...(site === undefined ? {} : { site }) }));
  const mending = (fault: (typeof hidden)[number]): readonly string[] =>
    replaceable.filter((part) => mends(layout, part, fault));
  const left = hidden.find((fault) => {
    const fit = mending(fault);
    const isCleaned = faultOf(fault.id).cleanedAt !== undefined;
    return !isCleaned && fit.length > 0 && !fit.some((part) => answer.parts.includes(part));
  });
  if (!left) return;
  const fit = mending(left);
  for (const part of answer.parts) {
    if (!replaceable.includes(part) || hidden.some((fault) => mends(layout, part, fault))) continue;
    const values = { part, id: left.id, fit: fit.join(', ') };
    const meant = fit.length === 1 ? { part, to: fit[0] } : null;
    findings.error(['answer', 'parts'], 'SCN124', word('check.mendsNothing', values), meant);
  }
}
