/**
 * What the compressor and its clutch give to eye, ear and nose. Hub against pulley is told in eighths of the pulley's
 * speed. Where a belt turns a clutch that slips by half, it squeals; faces over 430 K smell [guess].
 */

import { wearOf } from '../../loop/car/compressorWear';
import { hasClutch } from '../../loop/car/coolingAsked';
import type { PlantParts } from '../assemblePlant';
import { hubTurning } from '../turning';
import { flag, type Signal, signal } from './signal';

const EIGHTHS = 8;
const SQUEALS_FROM = 0.5;
const SMELLS_FROM_K = 430;
const KNOCKS_FROM_KG_PER_S = 0.001;
const RATTLES_FROM = 0.3;

export function compressorCues({ car }: PlantParts): Signal[] {
  const slip = (): number => car.number('clutchSlip');
  return [
    flag('compressor.knocking', 'cue', () => car.number('sluggingKgPerS') > KNOCKS_FROM_KG_PER_S),
    flag('compressor.rattling', 'cue', () => hubTurning(car) && wearOf(car.network.reserve) > RATTLES_FROM),
    ...(hasClutch(car.vehicle)
      ? [
          signal('clutch.hubSpeedRatio', '1', 'cue', () =>
            hubTurning(car) ? Math.round(EIGHTHS * (1 - slip())) / EIGHTHS : 0,
          ),
          flag('clutch.squealing', 'cue', () => slip() > SQUEALS_FROM),
          flag('clutch.smelling', 'cue', () => car.number('clutchFaceK') > SMELLS_FROM_K),
        ]
      : []),
  ];
}
