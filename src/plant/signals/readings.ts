/** What instruments show, through lag, offset, range and resolution. NaN where the bench has no such instrument. */
import type { ToolId } from '../../equipment/tools';
import { CHANNEL_TOOLS } from '../panel';
import type { Rig } from '../rig';
import { type Signal, signal } from './signal';

export function readingSignals(rig: Rig): Signal[] {
  const reading = (id: string, unit: string, channel: string): Signal =>
    signal(id, unit, 'reading', () => rig.reading(channel));
  return [
    reading('chargingGauge.gaugePressurePa', 'Pa', 'charging-gauge'),
    reading('lowGauge.gaugePressurePa', 'Pa', 'low-gauge'),
    reading('highGauge.gaugePressurePa', 'Pa', 'high-gauge'),
    reading('airThermometer.temperatureK', 'K', 'air'),
    reading('lineThermometer.temperatureK', 'K', 'line'),
    reading('scale.massKg', 'kg', 'scale'),
    ...TOOL_READINGS.filter(([, , channel]) => has(rig, CHANNEL_TOOLS[channel])).map((row) =>
      reading(...row),
    ),
  ];
}

const has = ({ tools }: Rig, tool: ToolId): boolean => tools.includes(tool);

/** Only there when the tool is on the bench. */
const TOOL_READINGS: readonly (readonly [id: string, unit: string, channel: string])[] = [
  ['micronGauge.absolutePressurePa', 'Pa', 'micron-gauge'],
  ['recoveryScale.massKg', 'kg', 'recovery-scale'],
  ['chargingScale.massKg', 'kg', 'charging-scale'],
  ['drainedOil.volumeM3', 'm3', 'drained-oil'],
  ['identifier.r134aShare', '1', 'gas-r134a'],
  ['identifier.r12Share', '1', 'gas-r12'],
  ['identifier.r1234yfShare', '1', 'gas-r1234yf'],
  ['identifier.hydrocarbonShare', '1', 'gas-hydrocarbon'],
  ['identifier.airShare', '1', 'gas-air'],
];
