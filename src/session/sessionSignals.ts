/**
 * Signals of the session itself: what a person wrote, read and decided, and where the probes are. They stand after the
 * plant's own in every condition and record. All are controls: a person gave them.
 */
import type { Plant } from '../plant/plantPort';
import type { SignalSpec } from '../plant/signalTypes';
import type { JobBook } from './jobBook';

interface SessionSignal extends SignalSpec {
  readonly read: (book: JobBook) => number;
}

const DECISIONS = ['charge', 'do-not-charge', 'stop-charging', 'refer'];

/** Which there are follows from what the plant offers when it is new. */
export function sessionSignals(plant: Plant): readonly SessionSignal[] {
  const found: SessionSignal[] = [];
  const bool = (id: string, read: (book: JobBook) => boolean): void => {
    found.push({ id, unit: 'bool', kind: 'control', read: (book) => (read(book) ? 1 : 0) });
  };
  for (const place of plant.choices('air-place'))
    bool(`probe.air.${place}`, (book) => book.probes.air === place);
  for (const place of plant.choices('line-place'))
    bool(`probe.line.${place}`, (book) => book.probes.line === place);
  for (const sheet of plant.choices('sheet'))
    bool(`sheet.${sheet}.read`, (book) => book.sheetsRead.includes(sheet));
  for (const port of plant.choices('port')) {
    bool(`port.${port}.traced`, (book) => book.traced.includes(port));
    bool(`port.${port}.judgedLow`, (book) => book.judged[port] === 'low');
    bool(`port.${port}.judgedHigh`, (book) => book.judged[port] === 'high');
  }
  for (const cause of plant.choices('cause'))
    bool(`cause.${cause}.named`, (book) => book.causes.at(-1) === cause);
  for (const part of plant.choices('replaceable'))
    bool(`part.${part}.replaced`, (book) => book.replaced.includes(part));
  // In force is the last one written.
  for (const answer of DECISIONS) bool(`decision.${answer}`, (book) => book.decisions.at(-1) === answer);
  found.push({
    id: 'label.writtenKg',
    unit: 'kg',
    kind: 'control',
    read: (book) => book.labelKg ?? Number.NaN,
  });
  return found;
}
