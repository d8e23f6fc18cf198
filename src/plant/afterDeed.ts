/**
 * What a command that has been done brings with it: what hands reached into, liquid that sprayed past them, a mismatch made
 * to fit and then opened.
 */
import type { PlantParts } from './assemblePlant';
import type { Command, Outcome, PlantEvent } from './commandSpecs';
import { contactOf, liquidKg } from './contact';

/** `reached`: worked out before the command, which may have moved what it reached for. */
export function afterDeed(
  parts: PlantParts,
  command: Command,
  reached: readonly PlantEvent[],
  outcome: Outcome,
): Outcome {
  if (!outcome.ok) return outcome;
  const more = [
    ...reached,
    ...contactOf(parts, sprayedKg(parts, command, outcome.events)),
    ...defeated(parts, command, outcome.events),
  ];
  return more.length === 0 ? outcome : { ok: true, events: [...outcome.events, ...more] };
}

/** Liquid behind what was opened to the room, kg. */
function sprayedKg(parts: PlantParts, command: Command, events: readonly PlantEvent[]): number {
  const happened = (id: string): boolean => events.some((event) => event.id === id);
  if (happened('opened-under-pressure')) {
    const port = parts.places.find(({ id }) => id === command.part)?.port;
    return port ? liquidKg(parts, port.vessel, port.cell) : 0;
  }
  if (happened('opened-to-air')) return tankLiquidKg(parts);
  if (!happened('sprayed') && !happened('purge-opened')) return 0;
  const hose = parts.hoses.get(String(command.hose) as never);
  return hose ? liquidKg(parts, hose.vessel) : 0;
}

/** A charging tank upside down gives liquid, a spurt of it before a hand is away [guess]. */
const SPURT_KG = 0.02;
function tankLiquidKg({ desk }: PlantParts): number {
  return desk.service.tank.inverted && desk.service.tank.turn > 0 ? SPURT_KG : 0;
}

/** A coupler that does not fit, held on by a loose adapter, and now opened. */
function defeated({ desk }: PlantParts, command: Command, events: readonly PlantEvent[]): PlantEvent[] {
  const hose = desk.hazards.adapters.find((id) => id === command.hose);
  const opened = command.do === 'coupler' && events.some(({ id }) => id === 'coupler-opened');
  return hose && opened ? [{ id: 'mismatch-defeated', subject: hose }] : [];
}
