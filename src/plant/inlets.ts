/** What sits at the free end of a hose: one can or one device. The vacuum gauge has a place of its own beside it. */
import type { HoseId } from '../equipment/hoses';
import type { Rig } from './rig';

/** Devices that take no inlet. */
export const BESIDE: ReadonlySet<string> = new Set(['micron-gauge']);

export function inletTaken({ desk }: Rig, hose: HoseId): boolean {
  if (Object.values(desk.cans).some(({ onto }) => onto === hose)) return true;
  return Object.entries(desk.service.devices).some(([id, { onto }]) => onto === hose && !BESIDE.has(id));
}
