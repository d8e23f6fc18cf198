/** Events of the compressor's own: each twentieth of damage by its cause, seizing, and its thermal switch. */
import { AT } from '../loop/car/carNumbers';
import { WEAR_CAUSES, WEAR_OF, wearOf } from '../loop/car/compressorWear';
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { COMPRESSOR } from './tally';

/** Where each cause's damage stands, made once: they are read in each step. */
const WEAR_AT = WEAR_CAUSES.map((cause) => AT[WEAR_OF[cause]]);
const DAMAGE_STEP = 0.05;
const SEIZED = 1;

export function noteCompressor({ car, tally }: PlantParts, events: PlantEvent[]): void {
  const { reserve } = car.network;
  for (let i = 0; i < WEAR_CAUSES.length; i++) {
    const at = COMPRESSOR.wearTold + i;
    const wear = reserve[WEAR_AT[i]];
    // a new one has none
    if (wear < tally[at]) tally[at] = wear;
    if (wear < tally[at] + DAMAGE_STEP) continue;
    tally[at] = wear;
    events.push({ id: 'compressor-damaged', subject: WEAR_CAUSES[i], quantity: wear, unit: '1' });
  }
  const wear = wearOf(reserve);
  if (wear >= SEIZED && tally[COMPRESSOR.wear] < SEIZED) events.push({ id: 'compressor-seized' });
  tally[COMPRESSOR.wear] = wear;
  const open = 1 - reserve[AT.thermalSwitch];
  if (open > tally[COMPRESSOR.thermalOpen]) events.push({ id: 'thermal-trip' });
  tally[COMPRESSOR.thermalOpen] = open;
}
