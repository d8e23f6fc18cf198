/**
 * Pressure-enthalpy diagram: where a state stands in the picture. Pressure logarithmic, 100 to 5,000 kPa absolute;
 * enthalpy linear, 150 to 480 kJ/kg. View box 560 x 430.
 */
import { scaleLinear, scaleLog } from 'd3-scale';
import { curveLinear, line } from 'd3-shape';
import { type PressureUnit, paPerUnit } from './displayUnits';
import type { SaturationLine } from './saturation';

export const PH_WIDTH = 560;
export const PH_HEIGHT = 430;
export const PH_FRAME = { left: 54, right: 16, top: 30, bottom: 46 } as const;

const PRESSURE_MARKS: Readonly<Record<PressureUnit, readonly number[]>> = {
  kPa: [100, 200, 500, 1000, 2000, 5000],
  psi: [15, 30, 75, 150, 300, 700],
  bar: [1, 2, 5, 10, 20, 50],
};

/** Round absolute pressures along the axis, in the unit and in Pa. */
export const pressureMarks = (
  unit: PressureUnit,
): readonly { readonly pressurePa: number; readonly number: number }[] =>
  PRESSURE_MARKS[unit].map((number) => ({ pressurePa: number * paPerUnit[unit], number }));

export const ENTHALPY_MARKS_J_PER_KG = [
  150_000, 200_000, 250_000, 300_000, 350_000, 400_000, 450_000,
] as const;
/** Shares of vapour that have a line inside the dome. */
export const QUALITIES = [0.2, 0.4, 0.6, 0.8] as const;

const tenth = (value: number): number => Math.round(value * 10) / 10;

const MOST_ENTHALPY = 480_000;

const enthalpyScale = scaleLinear()
  .domain([150_000, MOST_ENTHALPY])
  .range([PH_FRAME.left, PH_WIDTH - PH_FRAME.right]);
const pressureScale = scaleLog()
  .domain([100_000, 5_000_000])
  .range([PH_HEIGHT - PH_FRAME.bottom, PH_FRAME.top]);

export const phX = (enthalpyJPerKg: number): number => tenth(enthalpyScale(enthalpyJPerKg));
/** Pressure below the axis is held just under its foot, where a point is still whole in the picture. */
export const phY = (pressurePa: number): number => tenth(pressureScale(Math.max(pressurePa, 90_000)));

const path = line<readonly [number, number]>()
  .x(([enthalpy]) => phX(enthalpy))
  .y(([, pressure]) => phY(pressure))
  .curve(curveLinear);

/** Liquid line up, over the critical pressure in a curve (the tables end just short of it), vapour line down. */
export function domePath(saturation: SaturationLine): string {
  const shown = saturation.pressurePa
    .map((pressure, i) => ({ pressure, i }))
    .filter(({ pressure }) => pressure >= 90_000);
  const liquid = shown.map(({ pressure, i }) => [saturation.liquidEnthalpyJPerKg[i], pressure] as const);
  const vapour = shown
    .map(({ pressure, i }) => [saturation.vapourEnthalpyJPerKg[i], pressure] as const)
    .reverse();
  const [[left, top], [right]] = [liquid[liquid.length - 1], vapour[0]];
  const middle = tenth((phX(left) + phX(right)) / 2);
  const control = tenth(2 * phY(saturation.criticalPressurePa) - phY(top));
  const down = (path(vapour) ?? '').replace(/^M[^L]*/, '');
  return `${path(liquid) ?? ''}Q${middle} ${control} ${phX(right)} ${phY(top)}${down}`;
}

/** The horizontal stretch of one temperature inside the dome: y, left x, right x; null where it is not in the picture. */
export function isotherm(
  saturation: SaturationLine,
  temperatureK: number,
): { readonly y: number; readonly left: number; readonly right: number } | null {
  const i = saturation.temperatureK.findIndex((sample) => Math.abs(sample - temperatureK) < 0.51);
  if (i < 0) return null;
  return {
    y: phY(saturation.pressurePa[i]),
    left: phX(saturation.liquidEnthalpyJPerKg[i]),
    right: phX(saturation.vapourEnthalpyJPerKg[i]),
  };
}

/** One share of vapour from the foot of the picture up to where the samples end. */
export function qualityLine(saturation: SaturationLine, quality: number): string {
  const points = saturation.pressurePa.flatMap((pressure, i) => {
    if (pressure < 100_000) return [];
    const [liquid, vapour] = [saturation.liquidEnthalpyJPerKg[i], saturation.vapourEnthalpyJPerKg[i]];
    return [[liquid + quality * (vapour - liquid), pressure] as const];
  });
  return path(points) ?? '';
}

/** One temperature outside the dome in vapour, from its saturation pressure down; empty where that was not sampled. */
export function vapourLine(saturation: SaturationLine, temperatureK: number): string {
  const line = saturation.superheated?.find((one) => Math.abs(one.temperatureK - temperatureK) < 0.51);
  if (!line) return '';
  const inFrame = line.pressurePa.flatMap((pressure, i) =>
    pressure >= 99_000 && line.enthalpyJPerKg[i] <= MOST_ENTHALPY
      ? [[line.enthalpyJPerKg[i], pressure] as const]
      : [],
  );
  return inFrame.length > 1 ? (path(inFrame) ?? '') : '';
}

export interface StatePoint {
  readonly pressurePa: number;
  readonly enthalpyJPerKg: number;
  readonly temperatureK: number;
}

export const isKnown = (point: StatePoint): boolean =>
  Number.isFinite(point.pressurePa) && Number.isFinite(point.enthalpyJPerKg);

/** Path through points, closed. */
export function cyclePath(points: readonly StatePoint[]): string {
  return `${path(points.map((point) => [point.enthalpyJPerKg, point.pressurePa] as const)) ?? ''}Z`;
}
