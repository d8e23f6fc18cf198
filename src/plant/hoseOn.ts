/** Whether a coupler sits on a port. */
import type { Rig } from './rig';

export function hoseOn({ desk }: Rig, port: string): boolean {
  return Object.values(desk.hoses).some((hose) => hose.port === port);
}
