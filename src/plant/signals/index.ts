/** Every signal of a plant, in a fixed order: readings, cues, controls, truth. */
import type { PlantParts } from '../assemblePlant';
import type { Rig } from '../rig';
import { controlSignals } from './controls';
import { cueSignals } from './cues';
import { readingSignals } from './readings';
import type { Signal } from './signal';
import { truthSignals } from './truth';

export function makeSignals(parts: PlantParts, rig: Rig): readonly Signal[] {
  return [...readingSignals(rig), ...cueSignals(parts), ...controlSignals(parts), ...truthSignals(parts)];
}
