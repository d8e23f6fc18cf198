/**
 * What a command that has been done brings with it: what hands reached into, and liquid that sprayed past them.
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
  const more = [...reached, ...contactOf(parts, sprayedKg(parts, command, outcome.events))];
  return more.length === 0 ? outcome : { ok: true, events: [...outcome.events, ...more] };
}

/** Liquid behind what was opened to the room, kg. */
function sprayedKg(parts: PlantParts, command: Command, events: readonly PlantEvent[]): number {
  const happened = (id: string): boolean => events.some((event) => event.id === id);
  if (happened('opened-under-pressure')) {
    const port = parts.places.find(({ id }) => id === command.part)?.port;
    return port ? liquidKg(parts, port.vessel, port.cell) : 0;
  }
  const isTank = events.some(({ id, subject }) => id === 'opened-to-air' && subject === 'charging-tank');
  if (isTank) return tankLiquidKg(parts);
  if (!happened('sprayed') && !happened('purge-opened')) return 0;
  const hose = parts.hoses.get(String(command.hose) as never);
  return hose ? liquidKg(parts, hose.vessel) : 0;
}

/** A charging tank upside down gives liquid, of what is in it no more than a spurt before a hand is away [guess]. */
const SPURT_KG = 0.02;
function tankLiquidKg(parts: PlantParts): number {
  const { inverted, turn } = parts.desk.service.tank;
  return inverted && turn > 0 ? Math.min(SPURT_KG, liquidKg(parts, parts.toolVessels.chargingTank)) : 0;
}
