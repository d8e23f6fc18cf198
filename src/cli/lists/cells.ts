/** What stands in the tables of `list`: names, cars, values as a file has them, figures in units of the trade. */
import { vehicleIds } from '../../loop/car/vehicles';
import type { SignalSpec } from '../../plant/signalTypes';
import { kindOf } from '../../session/conditions/valueInUnit';
import { type DisplayUnit, formatQuantity } from '../../units/format';
import { unitsOf } from '../../units/unitTable';
import { isWordId, say, type WordId, word } from '../../words/words';

type HeadingOf<Id extends WordId> = Id extends `list.${infer Rest}`
  ? Rest extends `${string}.${string}`
    ? never
    : Rest
  : never;
/** The words of shared/words/en/list.yaml that head a column. */
export type Heading = HeadingOf<WordId>;

export const named = (id: string, otherwise = ''): string => (isWordId(id) ? say({ id }) : otherwise);

/** A part, a line or a place of the air. */
export const placeNamed = (id: string): string =>
  named(`name.part.${id}`, named(`name.line.${id}`, named(`name.zone.${id}`, named(`name.place.${id}`))));

export const carsText = (cars: readonly string[]): string =>
  vehicleIds.every((id) => cars.includes(id)) ? word('list.told.everyCar') : cars.join(', ');

export const joined = (ids: readonly string[]): string => ids.join(', ');

/** As it may be written in one line of a file. */
export function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return String(value);
  const pairs = Object.entries(value).map(([key, inner]) => `${key}: ${flow(inner)}`);
  return `{ ${pairs.join(', ')} }`;
}

/** In which units a signal or measure is written in a condition. */
export function writtenIn({ id, unit }: Pick<SignalSpec, 'id' | 'unit'>): string {
  if (unit === 'bool') return joined(['on', 'off']);
  if (unit === 'event') return flow({ event: id });
  try {
    return joined(Object.keys(unitsOf(kindOf({ id, unit }))));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return unit === '1' ? word('list.told.bare') : word('list.told.bareIn', { unit });
  }
}

/** The unit of a range, that of a step in it, and how finely the step is told. */
const TRADE: Readonly<Record<string, readonly [range: DisplayUnit, step: DisplayUnit, finest: number]>> = {
  Pa: ['kPa', 'kPa', 1],
  K: ['degC', 'K', 0.1],
  kg: ['kg', 'g', 1],
  m3: ['mL', 'mL', 1],
  '1': ['percent', 'percent', 0.1],
  micron: ['micron', 'micron', 1],
};

interface Ranged {
  readonly id: string;
  readonly unit: string;
  readonly minimum: number;
  readonly maximum: number;
  readonly resolution: number;
}

export function rangeText({ id, unit, minimum, maximum, resolution }: Ranged): string {
  const [range, step, finest] = TRADE[id === 'micron-gauge' ? 'micron' : unit];
  return word('list.told.range', {
    from: formatQuantity(minimum, range, 1),
    to: formatQuantity(maximum, range, 1),
    step: formatQuantity(resolution, step, finest),
  });
}
