/**
 * Measures: numbers about a whole session, worked out once when the record is made. The closed list that `outcome` rules
 * and sentences may name. NaN where there is nothing to measure.
 */
import { areOfOneSystem } from '../../faults/systemOf';
import type { SignalSpec } from '../../plant/signalTypes';
import { claimedCauses } from './claimedCauses';
import type { RecordedEvent } from './record';
import { taskMeasures } from './taskMeasures';

/** What a measure may look at: the last row and everything that happened. */
export interface Whole {
  /** Last value of a signal; NaN where the plant has no such signal. */
  last(signal: string): number;
  /** Last values of all signals a test accepts. */
  lastOf(test: (id: string) => boolean): readonly number[];
  readonly events: readonly RecordedEvent[];
  /** Causes that are right to name, by the scenario. */
  readonly rightCauses: readonly string[];
  /** Faults that are in the car, each once. */
  readonly hidden: readonly string[];
  readonly usefulParts: readonly string[];
}

interface Measure {
  readonly unit: SignalSpec['unit'];
  readonly of: (whole: Whole) => number;
  /** Worked out afterwards, from ghost cars, and NaN until then. */
  readonly weighed?: true;
}

const BY_GHOSTS: Measure = { unit: '1', of: () => Number.NaN, weighed: true };

const middleOf = (kind: string, last: string) => (id: string) =>
  id.startsWith(`${kind}.`) && id.endsWith(`.${last}`);
const count = (values: readonly number[], wanted: number): number =>
  values.filter((v) => v === wanted).length;
const eventsOf = ({ events }: Whole, id: string) => events.filter((event) => event.id === id);
/** Each subject once. */
const namesOf = (whole: Whole, id: string): string[] => [
  ...new Set(eventsOf(whole, id).map(({ subject = '' }) => subject)),
];
/** Decisions of which one excludes the others; to stop is none of them. */
const EXCLUDING: ReadonlySet<string> = new Set(['charge', 'do-not-charge', 'refer']);
const SAME_SYSTEM = 0.4;
const LOOK_ALIKE = 0.5;
const lastSubject = (whole: Whole, id: string): string | undefined => eventsOf(whole, id).at(-1)?.subject;

/** Where nothing is hidden, any of the right names will do; where something is, a look-alike that is right to name is half. */
function rightShare(whole: Whole): number {
  const { rightCauses, hidden } = whole;
  const named = eventsOf(whole, 'diagnosed').map(({ subject = '' }) => subject);
  const claimed = claimedCauses(named, hidden.length);
  const share = (cause: string): number => {
    if (claimed.includes(cause)) return 1;
    const near = claimed.filter((one) => areOfOneSystem(cause, one));
    if (near.some((one) => rightCauses.includes(one) && !hidden.includes(one))) return LOOK_ALIKE;
    return near.length > 0 ? SAME_SYSTEM : 0;
  };
  if (hidden.length === 0) return Math.max(0, ...rightCauses.map(share));
  return hidden.reduce((sum, cause) => sum + share(cause), 0) / hidden.length;
}

const measures = {
  'charge.errorKg': {
    unit: 'kg',
    of: (w) => Math.abs(w.last('loop.massKg') - w.last('label.massKg')),
  },
  'charge.missingKg': { unit: 'kg', of: (w) => w.last('label.massKg') - w.last('loop.massKg') },
  'charge.addedKg': { unit: 'kg', of: (w) => w.last('cans.netIntoLoopKg') },
  'vented.kg': { unit: 'kg', of: (w) => w.last('vented.kg') },
  'vented.leakKg': { unit: 'kg', of: (w) => w.last('vented.leakKg') },
  /** What a person let out and no leak did. */
  'vented.byHandKg': { unit: 'kg', of: (w) => w.last('vented.kg') - w.last('vented.leakKg') },
  'vented.co2Kg': { unit: 'kg', of: (w) => w.last('vented.co2Kg') },
  'loop.openedCount': { unit: '1', of: (w) => w.last('loop.openedCount') },
  'slugged.kg': { unit: 'kg', of: (w) => w.last('compressor.sluggedKg') },
  'caps.offCount': { unit: '1', of: (w) => count(w.lastOf(middleOf('cap', 'on')), 0) },
  'hoses.leftCount': { unit: '1', of: (w) => count(w.lastOf(middleOf('hose', 'coupled')), 1) },
  'ports.wrongCount': {
    unit: '1',
    of: (w) => {
      const byPort = new Map(eventsOf(w, 'judged').map(({ subject = '', quantity }) => [subject, quantity]));
      const right = [...byPort.values()].filter((quantity) => quantity === 1).length;
      return w.lastOf(middleOf('cap', 'on')).length - right;
    },
  },
  'label.errorKg': {
    unit: 'kg',
    of: (w) => Math.abs(w.last('label.writtenKg') - w.last('loop.massKg')),
  },
  'cause.wrongCount': {
    unit: '1',
    of: (w) => (w.rightCauses.includes(lastSubject(w, 'diagnosed') ?? '') ? 0 : 1),
  },
  /** 1: every fault named; 0.4 for a cause of the same system; the mean where several are hidden. */
  'diagnosis.right': { unit: '1', of: rightShare },
  'diagnosis.justified': BY_GHOSTS,
  'diagnosis.efficient': BY_GHOSTS,
  'diagnosis.noiseless': BY_GHOSTS,
  'diagnosis.leftCount': BY_GHOSTS,
  'diagnosis.spentMinutes': BY_GHOSTS,
  'diagnosis.leastMinutes': BY_GHOSTS,
  'diagnosis.noiseCount': BY_GHOSTS,
  'cause.guessedCount': {
    unit: '1',
    of: (w) => namesOf(w, 'diagnosed').filter((cause) => !w.rightCauses.includes(cause)).length,
  },
  'decisions.takenBackCount': {
    unit: '1',
    of: (w) => Math.max(0, namesOf(w, 'decided').filter((answer) => EXCLUDING.has(answer)).length - 1),
  },
  'parts.wrongCount': {
    unit: '1',
    of: (w) => eventsOf(w, 'replaced').filter(({ subject = '' }) => !w.usefulParts.includes(subject)).length,
  },
  ...taskMeasures,
  'readings.count': { unit: '1', of: (w) => eventsOf(w, 'noted').length },
} as const satisfies Readonly<Record<string, Measure>>;

export type MeasureId = keyof typeof measures;

export interface MeasureSpec {
  readonly id: MeasureId;
  readonly unit: string;
  readonly weighed: boolean;
}

export const measureList: readonly MeasureSpec[] = Object.entries<Measure>(measures).map(
  ([id, { unit, weighed = false }]) => ({ id: id as MeasureId, unit, weighed }),
);

export function measure(whole: Whole): Record<MeasureId, number> {
  const entries = Object.entries(measures).map(([id, { of }]) => [id, of(whole)]);
  return Object.fromEntries(entries) as Record<MeasureId, number>;
}
