/**
 * Hands in the bay: what a command reaches for, and whether something there turns or is live. Worked out before the command is
 * done, from where the thing lies in the layout.
 */
import { HIGH_VOLTAGE } from '../equipment/highVoltage';
import type { PointMm, RectMm } from '../layout/layout';
import type { PlantParts } from './assemblePlant';
import type { Command, CommandId, PlantEvent } from './commandSpecs';
import { fanSpeedShare, fanTurning } from './turning';
import { voltage } from './voltage';

/** Commands that a hand does at a port or part of the bay. */
const HANDS_ON: ReadonlySet<CommandId> = new Set<CommandId>([
  ...(['cap', 'couple', 'coupler', 'uncouple', 'route', 'identify', 'test-sealer', 'inject-dye'] as const),
  ...(['probe-line', 'sniff', 'soap', 'clean', 'replace', 'open-loop', 'close-loop'] as const),
  ...(['cover', 'convert-port', 'disable-port'] as const),
]);
const UNDOES: ReadonlySet<CommandId> = new Set<CommandId>(['open-loop', 'replace']);
/** A sleeve reaches so far from a hand; a hand works so near a fan [guess]. */
const SLEEVE_MM = 200;
const FINGERS_MM = 60;

/** Events of reaching there now. */
export function handsIn(parts: PlantParts, command: Command): PlantEvent[] {
  if (!HANDS_ON.has(command.do)) return [];
  const events: PlantEvent[] = [];
  const at = pointOf(parts, command);
  const { desk, car, layout } = parts;
  const near = (hazard: string, mm: number, turns: (part: string) => boolean): boolean =>
    layout.zones.some(
      (zone) =>
        zone.hazard === hazard && turns(zone.part ?? '') && (at ? apartMm(zone.rect, at) <= mm : false),
    );
  const runs = desk.engineRpm > 0;
  if (!desk.worn.overall && runs && near('belt', SLEEVE_MM, () => true))
    events.push({ id: 'loose-near-belt', quantity: desk.engineRpm, unit: 'rpm' });
  const struck = fanAt(parts, command, at);
  if (struck !== undefined)
    events.push({ id: 'hand-in-fan', subject: struck, quantity: fanSpeedShare(car, struck), unit: '1' });
  if (UNDOES.has(command.do) && /compressor/.test(String(command.part))) {
    const volts = voltage(parts);
    if (volts > HIGH_VOLTAGE.safeVolts)
      events.push({ id: 'live-touched', subject: String(command.part), quantity: volts, unit: '1' });
  }
  return events;
}

/**
 * The turning fan that a hand there is in: beside one that has stood and starts by itself, or in one that is seen to turn, past
 * which a clamp on a pipe is still put with care [guess].
 */
function fanAt({ car, layout, desk }: PlantParts, command: Command, at: PointMm | null): string | undefined {
  const reached = String(command.part ?? '');
  if (fanTurning(car, reached)) return reached;
  const isSeen = desk.engineRpm > 0;
  if (isSeen && command.do === 'probe-line') return undefined;
  const nearMm = isSeen ? 0 : FINGERS_MM;
  const isNear = (rect: RectMm): boolean => at !== null && apartMm(rect, at) <= nearMm;
  return layout.zones.find(
    ({ hazard, part = '', rect }) => hazard === 'fan' && fanTurning(car, part) && isNear(rect),
  )?.part;
}

function pointOf({ layout, desk, places }: PlantParts, command: Command): PointMm | null {
  const hose = desk.hoses[String(command.hose) as keyof typeof desk.hoses];
  const port = String(command.port ?? hose?.port ?? '');
  const byPort = layout.ports.find(({ id }) => id === port);
  if (byPort) return byPort.at;
  const id = String(command.at ?? command.part ?? '');
  return places.find((place) => place.id === id)?.at ?? null;
}

function apartMm([x, y, w, h]: RectMm, [px, py]: PointMm): number {
  const dx = Math.max(x - px, 0, px - (x + w));
  const dy = Math.max(y - py, 0, py - (y + h));
  return Math.sqrt(dx * dx + dy * dy);
}
