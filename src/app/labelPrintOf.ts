/** The under-hood label as it reads from near: the maker's, what is left of it, or a conversion's over it. */
import type { LabelPrint } from '../bay/bayFrame';
import { inWords, writeMass } from '../instruments/displayUnits';
import { vehicleOf } from '../loop/car/vehicles';
import type { SessionModel } from '../panels/sessionModel';
import { formatQuantity } from '../units/format';
import { word } from '../words/words';

const G_PER_KG = 1000;
/** Of what the cars here can hold, the one that burns (ASHRAE 34: A2L). */
const BURNS = 'R-1234yf';

export function labelPrintOf(session: SessionModel): LabelPrint {
  const { label, metering } = vehicleOf(session.facts.vehicleId);
  const mass = (kg: number): string => inWords(writeMass(kg, session.units().mass));
  const covered = session.view().conversionLabel;
  if (covered)
    return {
      look: 'conversion',
      over: word('bay.label.converted'),
      heading: covered.refrigerant,
      rows: [
        [word('bay.label.charge'), mass(covered.grams / G_PER_KG)],
        [word('bay.label.oil'), `${covered.oil}, ${covered.mL} mL`],
      ],
      signed: word('bay.label.signed'),
      note: word('bay.label.was', { refrigerant: label.refrigerant }),
      burns: false,
    };
  const plain = { over: '', heading: word('bay.label.heading'), signed: '' };
  const [heading, text] = session.bayLabel();
  if (text === '')
    return { ...plain, look: heading === '' ? 'none' : 'worn', rows: [], note: '', burns: false };
  const burns = label.refrigerant === BURNS;
  return {
    ...plain,
    look: 'printed',
    rows: [
      [word('bay.label.refrigerant'), label.refrigerant],
      [
        word('bay.label.charge'),
        word('bay.label.give', { charge: mass(label.charge), tolerance: mass(label.tolerance) }),
      ],
      [word('bay.label.oil'), `${label.oil}, ${formatQuantity(label.oilAmount, 'mL', 1)}`],
      [
        word('bay.label.expansion'),
        word(metering.kind === 'orifice-tube' ? 'bay.label.orifice' : 'bay.label.valve'),
      ],
    ],
    note: word(burns ? 'bay.label.noteBurns' : 'bay.label.note'),
    burns,
  };
}
