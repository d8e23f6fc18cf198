/** Random hands on the deck of plants: every vehicle, every two faults, every command in every state. */
import '../../src/layout/allLayouts';
import '../../src/loop/car/allVehicles';
import '../../src/refrigerant/allFluids';
import { type FuzzReport, fuzzDeck, replayPlant } from '../../src/plant/fuzz/fuzzDeck';

export function plants(
  steps: number,
  seed: number,
  only?: number,
): FuzzReport | { lines: readonly string[] } {
  return only === undefined ? fuzzDeck(steps, seed) : replayPlant(steps, seed, only);
}
