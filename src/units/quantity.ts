/**
 * Reads a quantity as a person writes it: a number, then a unit of the kind asked for ("620 g", "35 degC", "1.2 bar abs",
 * "50%"). Returns SI (see `KINDS`). A bare number is an error, and so is a gauge pressure where an absolute is meant.
 */
import { KINDS, type QuantityKind, unitsOf } from './unitTable';

export type QuantityFault = 'notAQuantity' | 'unitMissing' | 'unitUnknown' | 'absoluteWanted' | 'gaugeWanted';

/** Says what was written, what is wrong with it and which units are allowed. */
export class QuantityError extends Error {
  override readonly name = 'QuantityError';
  readonly fault: QuantityFault;
  readonly text: string;
  readonly kind: QuantityKind;
  readonly allowedUnits: readonly string[];

  constructor(fault: QuantityFault, text: string, kind: QuantityKind) {
    const allowedUnits = Object.keys(unitsOf(kind));
    super(`"${text}": ${REASONS[fault]}; expected a number and one of ${allowedUnits.join(', ')} (${kind})`);
    this.fault = fault;
    this.text = text;
    this.kind = kind;
    this.allowedUnits = allowedUnits;
  }
}

const REASONS: Readonly<Record<QuantityFault, string>> = {
  notAQuantity: 'not a number with a unit',
  unitMissing: 'the unit is missing',
  unitUnknown: 'not a unit of this kind',
  absoluteWanted: 'this is a gauge pressure, an absolute one is wanted',
  gaugeWanted: 'this is an absolute pressure, a gauge one is wanted',
};

const FORM = /^\s*([+\-−]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*?)\s*$/;

/** The SI value of `text`. Throws `QuantityError`. */
export function parseQuantity(text: string, kind: QuantityKind): number {
  const match = FORM.exec(text);
  if (match === null) throw new QuantityError('notAQuantity', text, kind);
  const number = Number(match[1].replace('−', '-'));
  const name = match[2].replace(/\s+/g, ' ');
  if (!Number.isFinite(number)) throw new QuantityError('notAQuantity', text, kind);
  if (name === '') throw new QuantityError('unitMissing', text, kind);
  const units = unitsOf(kind);
  if (!Object.hasOwn(units, name)) throw new QuantityError(faultOfUnit(name, kind), text, kind);
  const { factor, shift = 0 } = units[name];
  return (number + shift) * factor;
}

export function isQuantityKind(name: string): name is QuantityKind {
  return Object.hasOwn(KINDS, name);
}

function faultOfUnit(name: string, kind: QuantityKind): QuantityFault {
  if (kind === 'absolutePressure' && Object.hasOwn(unitsOf('gaugePressure'), name)) return 'absoluteWanted';
  if (kind === 'gaugePressure' && Object.hasOwn(unitsOf('absolutePressure'), name)) return 'gaugeWanted';
  return 'unitUnknown';
}
