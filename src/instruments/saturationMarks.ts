/**
 * The inner scale of a gauge face: at which angle the refrigerant boils at round temperatures. It comes from the
 * saturation line, so its marks are never evenly spaced. Numerals that would touch the last one kept are left out; on the
 * low face 0 degrees stays, with a frost star (water freezes there).
 */
import type { TemperatureUnit } from './displayUnits';
import { ATMOSPHERE_PA } from './displayUnits';
import { type FaceKind, fullScalePa, gaugeAngleDeg } from './gaugeScale';
import { type SaturationLine, saturationPressurePa } from './saturation';

export interface SaturationMark {
  readonly angleDeg: number;
  readonly kind: 'fine' | 'round';
  /** Text at a round mark that has room; `alternate` ones go where faces are small. */
  readonly numeral: string | null;
  readonly alternate: boolean;
  readonly freezing: boolean;
}

/** Least distance of two numerals along their ring, in degrees (13 units at radius 48). */
const ROOM_DEG = 15.5;

interface Rule {
  readonly from: number;
  readonly to: number;
  readonly fine: number;
  readonly round: number;
}

const RULES: Readonly<Record<TemperatureUnit, Readonly<Record<FaceKind, Rule>>>> = {
  degC: { low: { from: -28, to: 92, fine: 2, round: 10 }, high: { from: 0, to: 95, fine: 5, round: 10 } },
  degF: { low: { from: -20, to: 200, fine: 5, round: 20 }, high: { from: 30, to: 205, fine: 10, round: 20 } },
};

const toKelvin = (value: number, unit: TemperatureUnit): number =>
  unit === 'degC' ? value + 273.15 : (value - 32) / 1.8 + 273.15;

export function saturationMarks(
  face: FaceKind,
  unit: TemperatureUnit,
  line: SaturationLine,
): readonly SaturationMark[] {
  const rule = RULES[unit][face];
  const marks: SaturationMark[] = [];
  const kept: number[] = [];
  const freezingValue = unit === 'degC' ? 0 : 32;
  const angleOf = (value: number): number | null => {
    const gauge = saturationPressurePa(line, toKelvin(value, unit)) - ATMOSPHERE_PA;
    return gauge >= (face === 'low' ? -90_000 : 0) && gauge <= fullScalePa[face]
      ? gaugeAngleDeg(face, gauge)
      : null;
  };
  const anchor = face === 'low' && unit === 'degC' ? angleOf(0) : null;
  if (anchor !== null) kept.push(anchor);
  let count = 0;
  for (let value = Math.ceil(rule.from / rule.fine) * rule.fine; value <= rule.to; value += rule.fine) {
    const angleDeg = angleOf(value);
    if (angleDeg === null) continue;
    const round = value % rule.round === 0;
    const isAnchor = anchor !== null && value === 0;
    const hasRoom = isAnchor || kept.every((other) => Math.abs(other - angleDeg) >= ROOM_DEG);
    if (round && hasRoom && !isAnchor) kept.push(angleDeg);
    marks.push({
      angleDeg,
      kind: round ? 'round' : 'fine',
      numeral: round && hasRoom ? String(value).replace('-', '−') : null,
      alternate: round && !isAnchor && count++ % 2 === 1,
      freezing: face === 'low' && value === freezingValue,
    });
  }
  return marks;
}
