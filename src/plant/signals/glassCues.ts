/**
 * What the sight glass in a receiver's head shows of the stream into the liquid line: bubbles by their share of the room,
 * and, where hardly any liquid goes by while it streams, oil that runs down the glass. Standing, it shows nothing new.
 */
import type { PlantParts } from '../assemblePlant';
import { hubTurning } from '../turning';
import { seen } from './seen';
import { flag, type Signal, signal } from './signal';

/** The kind of part that has a glass. */
const WITH_GLASS = 'drier';
/** Under this share of liquid the glass is wetted by oil alone [guess]. */
const DRY_BELOW = 0.12;

export function glassCues({ car, layout }: PlantParts): Signal[] {
  const line = car.loop.parts.find(({ part }) => part === 'liquid');
  if (!line || layout.parts.every(({ kind }) => kind !== WITH_GLASS)) return [];
  const liquid = (): number => car.network.liquidShare(line.vessel, line.firstCell);
  const streams = (): boolean => hubTurning(car);
  return [
    signal('sightGlass.bubblesRatio', '1', 'cue', () =>
      streams() && liquid() >= DRY_BELOW ? seen(1 - liquid()) : 0,
    ),
    flag('sightGlass.streaked', 'cue', () => streams() && liquid() < DRY_BELOW),
  ];
}
