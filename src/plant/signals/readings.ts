/** What instruments show, through lag, offset, range and resolution. NaN where the bench has no such instrument. */
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
  ];
}
