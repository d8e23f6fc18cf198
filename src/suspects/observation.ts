/**
 * What a person has taken in: a reading noted on the card, or a look at a part that turns or stands. Made from a record,
 * which holds what the instruments of that seed showed.
 *
 * A channel counts again only after something could have changed: a command that acts on the car or its loop in between,
 * or two minutes (a loop settles within a few). A probe in another place is another channel.
 */
import type { CommandId } from '../plant/commandSpecs';
import { CHANNELS, type Channel } from '../plant/panel';
import { STEP_S } from '../plant/stepTime';
import { type RecordedAction, type SessionRecord, valueAt } from '../session/record/record';

interface Taken {
  /** Number of the action in the record that took it. */
  readonly action: number;
  readonly step: number;
  /** Channel with the place of its probe, `air@centre-vent`; or the signal a look gives, `fan.fan.turning`. */
  readonly channel: string;
  /** SI; 1 or 0 for a look. */
  readonly value: number;
  /** Whether it is evidence, or the same thing read again. */
  readonly counts: boolean;
}

export interface Reading extends Taken {
  readonly kind: 'reading';
  readonly instrument: Channel;
  readonly unit: string;
  /** The gauge was zeroed before: its fixed error is taken off. */
  readonly zeroed: boolean;
}

export interface Look extends Taken {
  readonly kind: 'look';
  readonly unit: 'bool';
}

export type Observation = Reading | Look;

const SETTLE_STEPS = 120 / STEP_S;
/** What acts on the air over the coils, the compressor or what is in loop and hoses; asking and writing changes nothing. */
const CHANGING: ReadonlySet<CommandId> = new Set<CommandId>([
  ...(['engine', 'ac', 'blower', 'windows', 'air', 'temperature', 'clean', 'bypass', 'isolate'] as const),
  ...(['couple', 'coupler', 'uncouple', 'manifold'] as const),
  ...(['tap', 'untap', 'can-valve', 'tilt', 'shake', 'place', 'purge'] as const),
  ...(['attach', 'detach', 'run', 'tank-valve', 'stand-tank', 'regulator', 'arrange'] as const),
  ...(['inject-oil', 'fill-oil', 'renew-seals', 'convert-port', 'fit-cut-out', 'replace'] as const),
  ...(['open-loop', 'close-loop', 'inject-dye'] as const),
]);

/** In the order they were taken. */
export function observationsOf(record: SessionRecord): readonly Observation[] {
  const probes: { air?: string; line?: string } = {};
  const zeroed = new Set<string>();
  const lastStep = new Map<string, number>();
  const found: Observation[] = [];
  for (const action of record.actions) {
    const { command, step } = action;
    if (isChanging(command.do)) lastStep.clear();
    if (command.do === 'probe-air') probes.air = String(command.at);
    if (command.do === 'probe-line') probes.line = String(command.at);
    if (command.do === 'zero') zeroed.add(`${command.gauge}-gauge`);
    const seen = readingIn(record, action, probes, zeroed) ?? lookIn(record, action);
    if (!seen) continue;
    const before = lastStep.get(seen.channel);
    const counts = before === undefined || step - before >= SETTLE_STEPS;
    if (counts) lastStep.set(seen.channel, step);
    found.push({ ...seen, counts });
  }
  return found;
}

/** Whether a command acts on the car or the loop, so that what was read before may read otherwise after. */
export const isChanging = (id: CommandId): boolean => CHANGING.has(id);

type Seen = Omit<Reading, 'counts'> | Omit<Look, 'counts'>;

function readingIn(
  { events }: SessionRecord,
  { number, row, step, command }: RecordedAction,
  probes: { readonly air?: string; readonly line?: string },
  zeroed: ReadonlySet<string>,
): Seen | null {
  if (command.do !== 'note-reading') return null;
  const event = events.find((happened) => happened.row === row && happened.id === 'noted');
  const instrument = CHANNELS.find((channel) => channel === event?.subject);
  if (event?.quantity === undefined || !instrument) return null;
  const place = instrument === 'air' || instrument === 'line' ? probes[instrument] : undefined;
  return {
    kind: 'reading',
    action: number,
    step,
    channel: place === undefined ? instrument : `${instrument}@${place}`,
    instrument,
    value: event.quantity,
    unit: event.unit ?? '1',
    zeroed: zeroed.has(instrument),
  };
}

/** A look tells something where the part turns or stands: a fan, the clutch. */
function lookIn(record: SessionRecord, { number, row, step, command }: RecordedAction): Seen | null {
  if (command.do !== 'look') return null;
  const at = String(command.at);
  const channel = [`fan.${at}.turning`, `${at}.turning`].find((id) =>
    record.signals.some((signal) => signal.id === id),
  );
  if (channel === undefined) return null;
  return { kind: 'look', action: number, step, channel, value: valueAt(record, row, channel), unit: 'bool' };
}
