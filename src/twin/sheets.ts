/** What a paper says, line by line: the scenario's own papers, the label under the bonnet, the service information. */
import type { ScenarioData } from '../../shared/schema/scenario';
import { vehicleOf } from '../loop/car/vehicles';
import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { word } from '../words/words';

export function sheetLines(data: ScenarioData, sheet: string, write: WriteQuantity = writeMetric): string[] {
  const paper = data.papers.find(({ id }) => id === sheet);
  if (paper) return [paper.title, ...paper.lines];
  const { label, service } = vehicleOf(data.vehicle);
  const mass = (value: number): string => write({ source: 'label', value, unit: 'kg' });
  if (sheet === 'label') {
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
  return [conditions, ...rows, word('twin.sheet.notFull')];
}
