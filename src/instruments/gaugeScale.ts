/**
 * Scale of the gauge faces: which angle a gauge pressure stands at, and which marks are drawn for a unit.
 *
 * 240 degrees from 8 o'clock (150) over the top to 4 o'clock (390). The low face is a compound one: vacuum, 0 to
 * -100 kPa, takes the first 36 degrees, 0 to 1,000 kPa the other 204. The high face runs 0 to 3,500 kPa evenly. The
 * unit changes marks and numerals; the needle does not move. Beyond the end a needle rests 4 degrees past the last mark.
 */
import type { PressureUnit } from './displayUnits';
import { paPerUnit } from './displayUnits';

export type FaceKind = 'low' | 'high';

export const SCALE_START_DEG = 150;
export const SCALE_END_DEG = 390;
const SWEEP_DEG = SCALE_END_DEG - SCALE_START_DEG;
const VACUUM_DEG = 36;
const REST_PAST_END_DEG = 4;
const VACUUM_PA = 100_000;

export const fullScalePa: Readonly<Record<FaceKind, number>> = { low: 1_000_000, high: 3_500_000 };

export interface ScaleMark {
  readonly angleDeg: number;
  readonly size: 'minor' | 'middle' | 'major';
  /** Numeral at a major mark, in the unit of the scale. */
  readonly numeral: string | null;
}

/** Where a gauge pressure in Pa stands, clamped to the ends of the scale (with the rest past the last mark). */
export function gaugeAngleDeg(face: FaceKind, gaugePressurePa: number): number {
  const full = fullScalePa[face];
  if (gaugePressurePa > full) return SCALE_END_DEG + REST_PAST_END_DEG;
  if (face === 'high') return SCALE_START_DEG + (SWEEP_DEG * Math.max(0, gaugePressurePa)) / full;
  if (gaugePressurePa < 0)
    return SCALE_START_DEG + VACUUM_DEG * (1 + Math.max(gaugePressurePa, -VACUUM_PA) / VACUUM_PA);
  return SCALE_START_DEG + VACUUM_DEG + ((SWEEP_DEG - VACUUM_DEG) * gaugePressurePa) / full;
}

/** Minor, middle and major step of each face in each unit. */
const STEPS: Readonly<Record<FaceKind, Readonly<Record<PressureUnit, readonly [number, number, number]>>>> = {
  low: { psi: [2, 10, 20], kPa: [20, 100, 200], bar: [0.2, 1, 2] },
  high: { psi: [10, 50, 100], kPa: [100, 500, 500], bar: [1, 5, 5] },
};

const isMultiple = (value: number, step: number): boolean =>
  Math.abs(value / step - Math.round(value / step)) < 1e-6;

/** Marks of the pressure part, from zero up. */
export function scaleMarks(face: FaceKind, unit: PressureUnit): readonly ScaleMark[] {
  const [minor, middle, major] = STEPS[face][unit];
  const marks: ScaleMark[] = [];
  for (let i = 0; ; i++) {
    const value = i * minor;
    const gaugePressurePa = value * paPerUnit[unit];
    if (gaugePressurePa > fullScalePa[face] + 500) return marks;
    const size = isMultiple(value, major) ? 'major' : isMultiple(value, middle) ? 'middle' : 'minor';
    const numeral = size === 'major' ? String(Math.round(value)) : null;
    marks.push({ angleDeg: gaugeAngleDeg(face, gaugePressurePa), size, numeral });
  }
}

/** Vacuum marks in Pa: tens of inHg where the scale is in psi, quarters of the part otherwise. */
const VACUUM_MARKS: Readonly<Record<PressureUnit, readonly (readonly [number, string | null])[]>> = {
  psi: [
    [-100_000, '30'],
    [-84_700, null],
    [-67_700, null],
    [-50_800, null],
    [-33_900, null],
    [-16_900, null],
  ],
  kPa: [
    [-100_000, '−100'],
    [-75_000, null],
    [-50_000, null],
    [-25_000, null],
  ],
  bar: [
    [-100_000, '−1'],
    [-75_000, null],
    [-50_000, null],
    [-25_000, null],
  ],
};

export function vacuumMarks(unit: PressureUnit): readonly ScaleMark[] {
  return VACUUM_MARKS[unit].map(([gaugePressurePa, numeral], i) => ({
    angleDeg: gaugeAngleDeg('low', gaugePressurePa),
    size: i % 2 === 0 ? 'middle' : 'minor',
    numeral,
  }));
}
