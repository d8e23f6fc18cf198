/** Leaks and the search for them: what detector, soap and lamp showed last, what hisses, what got to the air and why. */
import type { PlantParts } from '../assemblePlant';
import { leakFlowKgPerS } from '../leakFlow';
import { searchReading } from '../searchReading';
import { SEARCH, VENT_CAUSES } from '../tally';
import { seen } from './seen';
import { flag, type Signal, signal } from './signal';

/** A leak of a gram in ten seconds is heard across the bay [guess]. */
const HISS_KG_PER_S = 1e-4;
/** As loud as it gets [guess]. */
const LOUD_KG_PER_S = 2e-3;

export function searchSignals(parts: PlantParts): Signal[] {
  const { car, desk, options, places, tally, vents } = parts;
  const tools = options.bench.tools ?? [];
  const shown = (tool: (typeof tools)[number], read: () => number) => () =>
    tools.includes(tool) ? read() : Number.NaN;
  const loudest = (): number =>
    places.reduce((most, { id, isHidden }) => (isHidden ? most : Math.max(most, leakFlowKgPerS(car, id))), 0);
  return [
    signal(
      'detector.ticks',
      '1',
      'reading',
      shown('detector', () => searchReading(desk.search, 'detector')),
    ),
    signal(
      'soap.bubbles',
      '1',
      'reading',
      shown('soap', () => searchReading(desk.search, 'soap')),
    ),
    signal(
      'lamp.glow',
      '1',
      'reading',
      shown('uv-lamp', () => searchReading(desk.search, 'lamp')),
    ),
    flag('leak.hissing', 'cue', () => loudest() > HISS_KG_PER_S),
    signal('leak.hissRatio', '1', 'cue', () =>
      loudest() > HISS_KG_PER_S ? seen(loudest() / LOUD_KG_PER_S) : 0,
    ),
    flag('hood.open', 'control', () => desk.search.hoodOpen),
    signal('loop.openedCount', '1', 'control', () => desk.search.opened.length),
    signal('leaks.massFlowKgPerS', 'kg/s', 'truth', () =>
      places.reduce((sum, { id }) => sum + leakFlowKgPerS(car, id), 0),
    ),
    signal('dye.inLoopKg', 'kg', 'truth', () => tally[SEARCH.dyeKg]),
    ...VENT_CAUSES.map((cause) => signal(`vented.${cause}Kg`, 'kg', 'truth', () => vents.kgBy(cause))),
    signal('vented.co2Kg', 'kg', 'truth', () => vents.co2Kg()),
  ];
}
