/** Run-time tables against the equations of state they are made from, at keyed random states. */
import { exp } from '../../../numerics/exp';
import { keyedUniform } from '../../../numerics/keyedRandom';
import { ln } from '../../../numerics/ln';
import { FLUID_DATA } from '../../../refrigerant/eos/fluidData';
import { createHelmholtz } from '../../../refrigerant/eos/helmholtz';
import { createSaturationLine } from '../../../refrigerant/eos/saturationLine';
import { solvePressureTemperature } from '../../../refrigerant/eos/singlePhase';
import { REFRIGERANT_IDS, refrigerant } from '../../../refrigerant/fluids';
import type { RefrigerantId } from '../../../refrigerant/refrigerant';
import { word } from '../../../words/words';
import { type ReportSection, table } from '../page';
import { type Point, plot } from '../plot';

const STATES = 400;
const LOWEST_PA = 1000;
const HIGHEST_SHARE = 0.9;
const PERCENT = 100;
const KILO = 1000;
const GAS_OVER_K = 60;
const LIQUID_UNDER_K = 50;

interface Errors {
  readonly temperature: Point[];
  readonly density: Point[];
}

export function properties(): ReportSection {
  const found = REFRIGERANT_IDS.map((id) => ({ id, errors: errorsOf(id) }));
  const worst = (points: readonly Point[]): string => Math.max(...points.map(([, e]) => e)).toPrecision(2);
  const figure = (title: string, of: keyof Errors): string =>
    plot({
      title,
      x: word('report.axis.kPa'),
      logX: true,
      y: word('report.axis.errorPercent'),
      lines: [],
      marks: found.map(({ id, errors }) => ({ name: id, points: errors[of] })),
    });
  return {
    id: 'properties',
    title: word('report.properties.title'),
    about: word('report.properties.about', { states: String(STATES) }),
    source: word('report.properties.source'),
    figures: [
      table(
        [
          word('report.properties.fluid'),
          word('report.properties.temperature'),
          word('report.properties.density'),
        ],
        found.map(({ id, errors }) => [id, worst(errors.temperature), worst(errors.density)]),
      ),
      figure(word('report.properties.temperature'), 'temperature'),
      figure(word('report.properties.density'), 'density'),
    ],
  };
}

function errorsOf(id: RefrigerantId): Errors {
  const fluid = refrigerant(id);
  const state = createHelmholtz(FLUID_DATA[id]);
  const line = createSaturationLine(FLUID_DATA[id]);
  const iso = fluid.isobar();
  const errors: Errors = { temperature: [], density: [] };
  const top = HIGHEST_SHARE * fluid.criticalPressurePa;
  for (let i = 0; i < STATES; i++) {
    const draw = (what: string): number => keyedUniform(1, `report ${what}`, id, i);
    const pressurePa = LOWEST_PA * exp(draw('pressure') * ln(top / LOWEST_PA));
    iso.setPressurePa(pressurePa);
    const liquid = draw('phase') < 0.5;
    const away = 1 + draw('away') * (liquid ? LIQUID_UNDER_K : GAS_OVER_K);
    const temperatureK = iso.saturationTemperatureK + (liquid ? -away : away);
    if (temperatureK < fluid.range.minTemperatureK || temperatureK > fluid.range.maxTemperatureK) continue;
    const start = liquid
      ? line.solveTemperature(temperatureK).liquid.densityKgPerM3
      : (line.solvePressure(pressurePa).vapour.densityKgPerM3 * iso.saturationTemperatureK) / temperatureK;
    solvePressureTemperature(state, pressurePa, temperatureK, start);
    const h = state.enthalpyJPerKg;
    const at = pressurePa / KILO;
    errors.temperature.push([at, PERCENT * Math.abs(iso.temperatureK(h) / temperatureK - 1)]);
    errors.density.push([at, PERCENT * Math.abs(iso.volumeM3PerKg(h) * state.densityKgPerM3 - 1)]);
  }
  return errors;
}
