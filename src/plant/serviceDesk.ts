/** What a person has set on the service tools, as plain data: part of the desk. */

import type { HoseId } from '../equipment/hoses';
import { OIL_INJECTOR } from '../equipment/oilInjector';
import { DEVICE_IDS, type DeviceId, type ToolId } from '../equipment/tools';

export interface DeviceOnDesk {
  onto: HoseId | null;
  /** Pumps only. */
  running: boolean;
}

export interface ServiceDesk {
  devices: Partial<Record<DeviceId, DeviceOnDesk>>;
  /** The charging tank's valve in sixteenths of a turn, and how it stands. */
  tank: { turn: number; inverted: boolean };
  /** Set point of the regulator over the air outside; 0 turned out. */
  regulatorPa: number;
  /** Oil left in the injector. */
  cartridgeM3: number;
  recovery: { lowSteps: number; contaminatedBy: readonly string[] };
  /** Refrigerant that the pump has blown out in this run. */
  blownOutKg: number;
  /** The identifier's last sample: where and until when it was drawn, and the shares it shows by gas. */
  sample: { port: string | null; endsAt: number; shares: Readonly<Record<string, number>> | null };
  /** Sides a path from the open charging tank leads to. */
  tankOpenTo: readonly ('low' | 'high')[];
}

export function freshService(tools: readonly ToolId[]): ServiceDesk {
  const devices: Partial<Record<DeviceId, DeviceOnDesk>> = {};
  for (const id of DEVICE_IDS) if (tools.includes(id)) devices[id] = { onto: null, running: false };
  return {
    devices,
    tank: { turn: 0, inverted: false },
    regulatorPa: 0,
    cartridgeM3: OIL_INJECTOR.cartridgeM3,
    recovery: { lowSteps: 0, contaminatedBy: [] },
    blownOutKg: 0,
    sample: { port: null, endsAt: 0, shares: null },
    tankOpenTo: [],
  };
}
