/**
 * Signals of the session itself: what a person wrote, read and decided, and where the probes are. They stand after the
 * plant's own in every condition and record; and how the law stands, which never changes. All are controls: a person gave
 * them, or the scenario.
 */
import type { Plant } from '../plant/plantPort';
import type { SignalSpec } from '../plant/signalTypes';
import { TOLD } from '../plant/taskDesk';
import type { JobBook } from './jobBook';
import { NO_STANDING, type Standing } from './law/standing';

interface SessionSignal extends SignalSpec {
  readonly read: (book: JobBook) => number;
}

const QUESTIONS = ['converted', 'opened', 'filled', 'used'];
const DECISIONS = ['charge', 'do-not-charge', 'stop-charging', 'refer'];

/** Which there are follows from what the plant offers when it is new. */
export function sessionSignals(plant: Plant, standing: Standing = NO_STANDING): readonly SessionSignal[] {
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
  for (const about of QUESTIONS) bool(`owner.${about}.asked`, (book) => book.asked.includes(about));
  for (const told of TOLD) bool(`told.${told}`, (book) => book.told.includes(told));
  // In force is the last one written.
  for (const answer of DECISIONS) bool(`decision.${answer}`, (book) => book.decisions.at(-1) === answer);
  for (const [id, is] of Object.entries(standing)) bool(id, () => is);
  found.push({
    id: 'label.writtenKg',
    unit: 'kg',
    kind: 'control',
    read: (book) => book.labelKg ?? Number.NaN,
  });
  return found;
}
