/** What a paper says, line by line: the scenario's own papers, the label under the bonnet, the service information. */
import type { ScenarioData } from '../../shared/schema/scenario';
import { vehicleOf } from '../loop/car/vehicles';
import type { ConversionLabel } from '../session/corePort';
import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { word } from '../words/words';

/** `covered`: the label of a conversion that stands over the old one. */
export function sheetLines(
  data: ScenarioData,
  sheet: string,
  covered: ConversionLabel | null = null,
  write: WriteQuantity = writeMetric,
): string[] {
  const paper = data.papers.find(({ id }) => id === sheet);
  if (paper) return [paper.title, ...paper.lines];
  const { label, service } = vehicleOf(data.vehicle);
  const mass = (value: number): string => write({ source: 'label', value, unit: 'kg' });
  if (sheet === 'label') {
    if (covered) return [newLabel(covered)];
    if (data.found?.label === 'none') return [word('twin.sheet.noLabel')];
    if (data.found?.label === 'worn') return [word('twin.sheet.wornLabel')];
    const { refrigerant, charge, tolerance, oil } = label;
    return [word('twin.sheet.label', { refrigerant, charge: mass(charge), tolerance: mass(tolerance), oil })];
  }
  const pressure = (value: number): string => write({ source: 'gaugePressurePa', value, unit: 'Pa' });
  const temperature = (value: number): string => write({ source: 'temperatureK', value, unit: 'K' });
  const rows = service.lines.map((line) =>
    word('twin.sheet.serviceLine', {
      ambient: temperature(line.ambient),
      lowFrom: pressure(line.lowFrom),
      lowTo: pressure(line.lowTo),
      highFrom: pressure(line.highFrom),
      highTo: pressure(line.highTo),
      ventFrom: temperature(line.ventFrom),
      ventTo: temperature(line.ventTo),
    }),
  );
  const speed = write({ source: 'engine.rpm', value: 60 * service.engine, unit: 'rpm' });
  const minutes = String(Math.round(service.minutes / 60));
  const conditions =
    service.engine > 0
      ? word('twin.sheet.service', { speed, minutes })
      : word('twin.sheet.serviceReady', { minutes });
  const amounts = word('twin.sheet.oilAmount', { oil: label.oil, amount: millilitres(label.oilAmount) });
  return [conditions, ...rows, word('twin.sheet.notFull'), amounts, ...conversionLines(data, mass)];
}

const millilitres = (m3: number): string => `${Math.round(m3 * 1e6)} mL`;

const newLabel = ({ refrigerant, grams, oil, mL }: ConversionLabel): string =>
  word('twin.sheet.newLabel', { refrigerant, charge: `${grams} g`, oil, amount: `${mL} mL` });

/** What the maker gives for a conversion, where the car has one. */
function conversionLines(data: ScenarioData, mass: (kg: number) => string): string[] {
  const { conversion } = vehicleOf(data.vehicle);
  if (!conversion) return [];
  const { refrigerant, charge, tolerance, oil, oilAmount } = conversion;
  return [
    word('twin.sheet.conversion', {
      refrigerant,
      charge: mass(charge),
      tolerance: mass(tolerance),
      oil,
      amount: millilitres(oilAmount),
    }),
  ];
}
