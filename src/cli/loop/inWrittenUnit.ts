/** An SI value in the unit that a person used, so that a complaint speaks as they did: 263.15 K after `-40 degC` is `-10 degC`. */
import { type QuantityKind, unitsOf } from '../../units/unitTable';

const DIGITS = 6;

/** `written` is a quantity that was read without complaint. */
export function inWrittenUnit(valueSi: number, written: string, kind: QuantityKind): string {
  const units = unitsOf(kind);
  const name = Object.keys(units)
    .filter((unit) => written.trim().endsWith(unit))
    .reduce((longest, unit) => (unit.length > longest.length ? unit : longest), '');
  const { factor, shift = 0 } = units[name];
  return `${Number((valueSi / factor - shift).toPrecision(DIGITS))} ${name}`;
}
