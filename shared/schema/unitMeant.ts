/**
 * What a person meant who wrote a quantity that cannot be read: `35 C` is `35 degC`, `620 gr` is `620 g`, a bare `480` of a
 * mass is `480 g`. Undefined where nothing is near, or nothing near is inside what is allowed.
 */

import { parseQuantity, QuantityError } from '../../src/units/quantity';
import { type QuantityKind, unitsOf } from '../../src/units/unitTable';
import { nearest } from '../../src/words/nearest';

export interface Allowed {
  readonly min: number;
  readonly max: number;
}

/** As people write them, in small letters; the first of a line that fits the kind is taken. */
const WRITTEN: Readonly<Record<string, readonly string[]>> = {
  c: ['degC'],
  celsius: ['degC'],
  centigrade: ['degC'],
  degrees: ['degC', 'deg'],
  degree: ['degC', 'deg'],
  deg: ['degC', 'deg'],
  f: ['degF'],
  fahrenheit: ['degF'],
  kelvin: ['K'],
  gr: ['g'],
  gm: ['g'],
  gram: ['g'],
  grams: ['g'],
  gramme: ['g'],
  grammes: ['g'],
  kilo: ['kg'],
  kilos: ['kg'],
  kgs: ['kg'],
  kilogram: ['kg'],
  kilograms: ['kg'],
  ounce: ['oz'],
  ounces: ['oz'],
  lbs: ['lb'],
  pound: ['lb'],
  pounds: ['lb'],
  percent: ['%'],
  pct: ['%'],
  psig: ['psi'],
  psia: ['psi abs'],
  sec: ['s'],
  secs: ['s'],
  second: ['s'],
  seconds: ['s'],
  m: ['min', 'm'],
  mins: ['min'],
  minute: ['min'],
  minutes: ['min'],
  hr: ['h'],
  hour: ['h'],
  hours: ['h'],
  litre: ['L'],
  litres: ['L'],
  liter: ['L'],
  liters: ['L'],
  'm³': ['m3'],
  'w/m²': ['W/m2'],
  w: ['W/m2', 'W'],
};
/** In which a bare number is tried, by kind; else in the order of the kind's own list. */
const USUAL: Partial<Readonly<Record<QuantityKind, readonly string[]>>> = {
  mass: ['kg', 'g', 'oz'],
  temperature: ['degC', 'degF', 'K'],
  time: ['min', 's'],
  absolutePressure: ['kPa abs', 'bar abs', 'psi abs', 'Pa abs'],
  gaugePressure: ['kPa', 'bar', 'psi'],
};
/** Where nothing else says what is allowed: nobody here has to do with more. */
const HERE: Partial<Readonly<Record<QuantityKind, Allowed>>> = { mass: { min: 0, max: 5 } };
const NUMBER = /^\s*([+\-−]?(?:\d+\.?\d*|\d*[.,]\d+)(?:[eE][+-]?\d+)?)\s*(.*?)\s*$/;

/** `beside` are the quantities that stand beside it, nearest first: a bare number is likely in the unit of one of them. */
export function unitMeant(
  given: string | number,
  kind: QuantityKind,
  allowed?: Allowed,
  beside: readonly string[] = [],
): string | undefined {
  const [, number, unit] = NUMBER.exec(String(given)) ?? [];
  if (number === undefined) return undefined;
  const value = number.replace(',', '.');
  const all = [...likeBeside(value, unit, kind, beside), ...candidates(value, unit, kind)];
  return all.find((text) => fits(text, kind, allowed ?? HERE[kind]));
}

/** A share is told by its own size. */
function likeBeside(value: string, unit: string, kind: QuantityKind, beside: readonly string[]): string[] {
  if (unit !== '' || kind === 'ratio') return [];
  const units = beside.filter((text) => fits(text, kind, undefined)).map((text) => NUMBER.exec(text)?.[2]);
  return units.flatMap((name) => (name === undefined ? [] : [`${value} ${name}`]));
}

function candidates(value: string, unit: string, kind: QuantityKind): string[] {
  const written = (name: string): string => (name === '%' ? `${value}%` : `${value} ${name}`);
  const known = Object.keys(unitsOf(kind));
  if (unit === '') {
    const share = Number(value);
    if (kind === 'ratio' && share > 0 && share <= 1) return [`${Math.round(1e6 * share) / 1e4}%`];
    return (USUAL[kind] ?? known).map(written);
  }
  const plain = unit.toLowerCase().replace(/\s+/g, ' ');
  const near = nearest(unit, known);
  return [
    ...known.filter((name) => [plain, `${plain} abs`].includes(name.toLowerCase())),
    ...(WRITTEN[plain.replace(/[°.\s]/g, '')] ?? []).filter((name) => known.includes(name)),
    ...(near === undefined ? [] : [near]),
  ].map(written);
}

function fits(text: string, kind: QuantityKind, allowed: Allowed | undefined): boolean {
  try {
    const si = parseQuantity(text, kind);
    return allowed === undefined || (si >= allowed.min && si <= allowed.max);
  } catch (error) {
    if (error instanceof QuantityError) return false;
    throw error;
  }
}
