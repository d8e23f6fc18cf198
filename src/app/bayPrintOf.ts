/** What is printed in the bay: the label from afar, and as it reads from near. */
import type { BayFrame } from '../bay/bayFrame';
import type { SessionModel } from '../panels/sessionModel';
import { labelPrintOf } from './labelPrintOf';

export const bayPrintOf = (model: SessionModel): Pick<BayFrame, 'label' | 'print'> => ({
  label: model.bayLabel(),
  print: labelPrintOf(model),
});
