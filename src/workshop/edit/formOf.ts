/** What a form shows of a text, in the units it is changed in. What cannot be read as meant is null. */
import { parseQuantity } from '../../units/quantity';
import { CELSIUS_ZERO_K } from '../../units/temperature';
import type { QuantityKind } from '../../units/unitTable';
import { lengthAt, type Path, scalarAt, type Tree, treeOf } from './tree';

export interface FaultRow {
  readonly fault: string;
  readonly severity: number | null;
}

export interface FormValues {
  readonly id: string;
  readonly title: string;
  readonly vehicle: string;
  readonly temperatureC: number | null;
  readonly humidityPercent: number | null;
  readonly chargeG: number | null;
  readonly faults: readonly FaultRow[];
  readonly complaint: string;
}

/** Null where the text cannot be read at all. */
export function formOf(text: string): FormValues | null {
  const tree = treeOf(text);
  if (!tree) return null;
  const words = (path: Path): string => String(scalarAt(tree, path) ?? '').trim();
  return {
    id: words(['id']),
    title: words(['title']),
    vehicle: words(['vehicle']),
    temperatureC: rounded(
      quantityAt(tree, ['weather', 'temperature'], 'temperature'),
      1,
      -CELSIUS_ZERO_K,
      100,
    ),
    humidityPercent: rounded(quantityAt(tree, ['weather', 'humidity'], 'ratio'), 100),
    chargeG: rounded(quantityAt(tree, ['contents', 'charge'], 'mass'), 1000),
    faults: Array.from({ length: lengthAt(tree, ['faults']) }, (_, index) => {
      const severity = scalarAt(tree, ['faults', index, 'severity']);
      return {
        fault: words(['faults', index, 'fault']),
        severity: typeof severity === 'number' ? severity : null,
      };
    }),
    complaint: words(['complaint']),
  };
}

function quantityAt(tree: Tree, path: Path, kind: QuantityKind): number | null {
  try {
    return parseQuantity(String(scalarAt(tree, path)), kind);
  } catch {
    return null;
  }
}

/** To tenths, or to what `parts` of one there are. */
const rounded = (value: number | null, factor: number, shift = 0, parts = 10): number | null =>
  value === null ? null : Math.round((value + shift) * factor * parts) / parts;
