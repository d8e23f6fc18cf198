/**
 * The papers of a session: the label, whatever lies on the seat, the service information. Figures come from the car's own
 * data, written in the reader's units.
 */
import type { ShelfScenario } from '../../shared/schema/shelfScenario';
import {
  type DisplayUnits,
  inWords,
  plainNumber,
  writeMass,
  writePressure,
  writeTemperature,
} from '../instruments/displayUnits';
import { type VehicleData, vehicleOf } from '../loop/car/vehicles';
import type { Sheet } from '../panels/sessionModel';
import type { ConversionLabel } from '../session/corePort';
import { formatQuantity } from '../units/format';
import { word } from '../words/words';
import { toldOf } from './told';

const S_PER_MIN = 60;
const RPM_PER_HZ = 60;
const G_PER_KG = 1000;

type Found = ShelfScenario['found'];

/** What is left of the label: all, nothing to read, or nothing; or what covers it. */
function labelSheet(
  { label }: VehicleData,
  units: DisplayUnits,
  left: Found['label'],
  covered: ConversionLabel | null,
): Sheet {
  const mass = (kg: number): string => inWords(writeMass(kg, units.mass));
  if (covered) {
    const said = word('twin.sheet.newLabel', {
      refrigerant: covered.refrigerant,
      charge: mass(covered.grams / G_PER_KG),
      oil: covered.oil,
      amount: `${covered.mL} mL`,
    });
    return { id: 'label', title: word('panels.sheet.label'), paragraphs: [said], head: [], rows: [] };
  }
  if (left === 'none' || left === 'worn') {
    const gone = word(left === 'none' ? 'twin.sheet.noLabel' : 'twin.sheet.wornLabel');
    return { id: 'label', title: word('panels.sheet.label'), paragraphs: [gone], head: [], rows: [] };
  }
  return {
    id: 'label',
    title: word('panels.sheet.label'),
    paragraphs: [],
    head: [],
    rows: [
      [word('panels.sheet.refrigerant'), label.refrigerant],
      [
        word('panels.sheet.charge'),
        word('panels.sheet.give', { value: mass(label.charge), tolerance: mass(label.tolerance) }),
      ],
      [word('panels.sheet.oil'), label.oil],
    ],
  };
}

const millilitres = (m3: number): string => formatQuantity(m3, 'mL', 1);

/** Oil of the whole loop, and the maker's figures for a conversion where there are any. */
function fillings({ label, conversion }: VehicleData, units: DisplayUnits): string[] {
  const mass = (kg: number): string => inWords(writeMass(kg, units.mass));
  const own = word('twin.sheet.oilAmount', { oil: label.oil, amount: millilitres(label.oilAmount) });
  if (!conversion) return [own];
  const { refrigerant, charge, tolerance, oil, oilAmount } = conversion;
  const given = { charge: mass(charge), tolerance: mass(tolerance), amount: millilitres(oilAmount) };
  return [own, word('twin.sheet.conversion', { refrigerant, oil, ...given })];
}

function serviceSheet(vehicle: VehicleData, units: DisplayUnits): Sheet {
  const { service, switches } = vehicle;
  const temperature = (kelvin: number): string => inWords(writeTemperature(kelvin, units.temperature));
  const span = (from: string, to: string): string => word('panels.sheet.span', { from, to });
  const pressures = (from: number, to: number, face: 'low' | 'high'): string =>
    span(writePressure(from, units.pressure, face).number, inWords(writePressure(to, units.pressure, face)));
  const given = {
    minutes: plainNumber(service.minutes / S_PER_MIN),
    humidity: formatQuantity(service.humidity, 'percent', 1),
  };
  const rpm = plainNumber(service.engine * RPM_PER_HZ);
  return {
    id: 'service',
    title: word('panels.sheet.pressures'),
    paragraphs: [
      word('panels.sheet.notFull'),
      service.engine > 0
        ? word('panels.sheet.conditions', { ...given, rpm })
        : word('panels.sheet.conditionsReady', given),
      word(switches.low.at === 'high' ? 'panels.sheet.lowSwitchOnHigh' : 'panels.sheet.lowSwitch', {
        opens: inWords(writePressure(switches.low.opens, units.pressure, 'low')),
        closes: inWords(writePressure(switches.low.closes, units.pressure, 'low')),
      }),
      word('panels.sheet.highSwitch', {
        opens: inWords(writePressure(switches.high.opens, units.pressure, 'high')),
        closes: inWords(writePressure(switches.high.closes, units.pressure, 'high')),
      }),
      ...fillings(vehicle, units),
    ],
    head: [
      word('panels.sheet.airAt'),
      word('panels.sheet.lowSide'),
      word('panels.sheet.highSide'),
      word('panels.sheet.vent'),
    ],
    rows: service.lines.map((line) => [
      temperature(line.ambient),
      pressures(line.lowFrom, line.lowTo, 'low'),
      pressures(line.highFrom, line.highTo, 'high'),
      span(writeTemperature(line.ventFrom, units.temperature).number, temperature(line.ventTo)),
    ]),
  };
}

/** `covered`: the label of a conversion that stands over the old one. */
export function sheetsOf(data: ShelfScenario, units: DisplayUnits, covered: ConversionLabel | null): Sheet[] {
  const vehicle = vehicleOf(data.vehicle);
  const told = toldOf(data.id).papers;
  const papers = data.papers.map((id): Sheet => {
    const { title = id, lines = [] } = told[id] ?? {};
    return { id, title, paragraphs: lines, head: [], rows: [] };
  });
  return [labelSheet(vehicle, units, data.found.label, covered), ...papers, serviceSheet(vehicle, units)];
}

/** Heading and text of the label under the bonnet, as printed. */
export function bayLabelOf(
  data: ShelfScenario,
  covered: ConversionLabel | null,
): readonly [heading: string, text: string] {
  const { label } = vehicleOf(data.vehicle);
  const printed = (refrigerant: string, kg: number): readonly [string, string] => [
    word('name.labelHeading'),
    word('name.labelText', { refrigerant, charge: formatQuantity(kg, 'kg', 0.01) }),
  ];
  if (covered) return printed(covered.refrigerant, covered.grams / G_PER_KG);
  const left = data.found.label ?? 'old';
  if (left !== 'old') return [left === 'worn' ? word('name.labelHeading') : '', ''];
  return printed(label.refrigerant, label.charge);
}
