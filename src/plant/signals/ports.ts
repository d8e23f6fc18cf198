/** What is to be seen at the ports and in the hand: how wide a fitting and a coupler are, and the letter on a cap. */
import { fittings } from '../../equipment/fittings';
import type { PlantParts } from '../assemblePlant';
import { fittingAt } from '../fittingAt';
import { type Signal, signal } from './signal';

/** No letter, L, H; a cap that is off is not read. */
const LETTER_CODE = { L: 1, H: 2 } as const;

export function portSignals(parts: PlantParts): Signal[] {
  const { desk, ports, hoses } = parts;
  const codeOf = (id: string): number => {
    const letter = desk.caps[id] ? desk.capLetters[id] : undefined;
    return letter ? LETTER_CODE[letter] : 0;
  };
  return [
    ...[...ports.keys()].flatMap((id) => [
      signal(`port.${id}.diameterM`, 'm', 'control', () => fittings[fittingAt(parts, id)].diameterM),
      signal(`cap.${id}.letter`, '1', 'cue', () => codeOf(id)),
    ]),
    ...[...hoses.values()].flatMap(({ spec: { id, coupler } }) =>
      coupler ? [signal(`hose.${id}.couplerM`, 'm', 'control', () => fittings[coupler].diameterM)] : [],
    ),
  ];
}
