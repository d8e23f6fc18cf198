/** Tells what has become true once, and again only after it has been false: the desk remembers. */
import type { PlantEvent } from './commandSpecs';
import type { HazardDesk } from './hazardDesk';

export function tellOnce(hazards: HazardDesk, isSo: boolean, event: PlantEvent, events: PlantEvent[]): void {
  const key = `${event.id}:${event.subject ?? ''}`;
  const wasTold = hazards.told.includes(key);
  if (isSo === wasTold) return;
  hazards.told = isSo ? [...hazards.told, key] : hazards.told.filter((one) => one !== key);
  if (isSo) events.push(event);
}
