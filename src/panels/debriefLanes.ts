/** The debrief's traces as lanes of the plot, in the reader's units. */
import { inWords, paPerUnit, writeMass } from '../instruments/displayUnits';
import type { Lane } from '../instruments/TimePlot';
import { DISPLAY_UNITS, valueInUnit } from '../units/format';
import { word } from '../words/words';
import type { DebriefModel, Trace } from './debriefModel';

/** Scales of charge and vent span at least this much. */
const LEAST_KG = 0.05;
const LEAST_DEGREES = 6;

function lane(debrief: DebriefModel, trace: Trace): Lane {
  const { units, data } = debrief;
  const seconds = trace.seconds;
  if (trace.id === 'high' || trace.id === 'low') {
    const name = trace.id === 'high' ? word('debrief.lane.high') : word('debrief.lane.low');
    return {
      name,
      unit: units.pressure,
      kind: trace.id,
      seconds,
      values: trace.values.map((pa) => pa / paPerUnit[units.pressure]),
    };
  }
  if (trace.id === 'charge') {
    const reference = {
      value: valueInUnit(data.labelKg, units.mass),
      text: word('debrief.label', { mass: inWords(writeMass(data.labelKg, units.mass)) }),
    };
    return {
      name: word('debrief.lane.charge'),
      unit: units.mass,
      kind: 'plain',
      seconds,
      values: trace.values.map((kg) => valueInUnit(kg, units.mass)),
      leastSpan: valueInUnit(LEAST_KG, units.mass),
      reference,
    };
  }
  const { symbol } = DISPLAY_UNITS[units.temperature];
  return {
    name: word('debrief.lane.vent'),
    unit: symbol,
    kind: 'plain',
    seconds,
    values: trace.values.map((kelvin) => valueInUnit(kelvin, units.temperature)),
    leastSpan: LEAST_DEGREES,
  };
}

export const lanesOf = (debrief: DebriefModel, traces: readonly Trace[]): Lane[] =>
  traces.map((trace) => lane(debrief, trace));
