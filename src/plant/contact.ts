/**
 * Liquid that gets out past a person's hands and face. Of the liquid that stands behind an opening a tenth meets the hands and
 * a hundredth an eye [guess]; under half a gram on skin, or a twentieth in an eye, nothing comes of it [guess]. It is as
 * cold as it boils at the pressure of the room. Gloves and goggles keep it off.
 */
import { FUMES } from '../equipment/fumes';
import type { VesselIndex } from '../loop/networkTypes';
import type { PlantParts } from './assemblePlant';
import type { PlantEvent } from './commandSpecs';
import { HAZARD } from './tally';

const HANDS_SHARE = 0.1;
const EYE_SHARE = 0.01;
const LEAST_ON_SKIN_KG = 0.5e-3;
const LEAST_IN_EYE_KG = 0.05e-3;

/** Liquid in one cell, kg. */
export function liquidKg(
  { car: { network } }: Pick<PlantParts, 'car'>,
  vessel: VesselIndex,
  cell = 0,
): number {
  const dryness = Math.max(0, Math.min(1, network.quality(vessel, cell)));
  return network.cellMassKg(vessel, cell) * (1 - dryness);
}

/** What a spray of so much liquid does to whoever stands there. */
export function contactOf({ tally, desk, car }: PlantParts, sprayedKg: number): PlantEvent[] {
  const events: PlantEvent[] = [];
  const coldK = FUMES[car.network.refrigerantId].boilsK;
  const onSkin = desk.worn.gloves ? 0 : HANDS_SHARE * sprayedKg;
  const inEye = desk.worn.goggles ? 0 : EYE_SHARE * sprayedKg;
  if (onSkin >= LEAST_ON_SKIN_KG) {
    tally[HAZARD.skinKg] += onSkin;
    events.push({ id: 'cold-on-skin', quantity: onSkin, unit: 'kg' });
  }
  if (inEye >= LEAST_IN_EYE_KG) {
    tally[HAZARD.eyeKg] += inEye;
    events.push({ id: 'cold-in-eye', quantity: inEye, unit: 'kg' });
  }
  if (events.length > 0) tally[HAZARD.contactK] = coldK;
  return events;
}
