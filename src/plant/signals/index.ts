/** Every signal of a plant, in a fixed order: readings, cues, controls, truth. */
import type { PlantParts } from '../assemblePlant';
import type { Rig } from '../rig';
import { compressorCues } from './compressorCues';
import { compressorTruth } from './compressorTruth';
import { controlSignals } from './controls';
import { cueSignals } from './cues';
import { hazardSignals } from './hazards';
import { portSignals } from './ports';
import { readingSignals } from './readings';
import { searchSignals } from './search';
import type { Signal } from './signal';
import { taskSignals } from './tasks';
import { toolSignals } from './tools';
import { truthSignals } from './truth';

export function makeSignals(parts: PlantParts, rig: Rig): readonly Signal[] {
  return [
    ...readingSignals(rig),
    ...cueSignals(parts),
    ...compressorCues(parts),
    ...controlSignals(parts),
    ...toolSignals(parts),
    ...searchSignals(parts),
    ...taskSignals(parts),
    ...truthSignals(parts),
    ...compressorTruth(parts),
    ...hazardSignals(parts),
    ...portSignals(parts),
  ];
}
