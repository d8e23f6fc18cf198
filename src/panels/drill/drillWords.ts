/** What the drill calls things: by what can be seen of them and where they lie. No name says a side. */
import { courseOf, stationAt } from '../../layout/course';
import { capLetter } from '../../layout/drill/capLetter';
import type { DrillBay } from '../../layout/drill/drill';
import { type DrillStep, madeOf } from '../../layout/drill/drillTrace';
import { middleOf, type Place, placeOf } from '../../layout/place';
import { asItStands } from '../../units/asItStands';
import { word } from '../../words/words';

const placeWords = ({ depth, across }: Place): string =>
  word('bay.place', { depth: word(`bay.depth.${depth}`), across: word(`bay.across.${across}`) });

export const sideWord = (side: 'low' | 'high'): string =>
  side === 'low' ? word('drill.verdict.low') : word('drill.verdict.high');

export const letterOf = (bay: DrillBay, portId: string): string =>
  bay.ports.find(({ id }) => id === portId)?.letter ?? '';

export function thingName(bay: DrillBay, id: string): string {
  const { layout } = bay;
  const port = bay.ports.find((one) => one.id === id);
  if (port) return word('drill.name.portCap', { letter: port.letter, cap: capWords(bay, id) });
  const line = layout.lines.find((one) => one.id === id);
  if (line) {
    const course = courseOf(line.way, line.fillet);
    const { x, y } = stationAt(course, course.lengthMm / 2);
    const diameter = asItStands(line.diameterMm);
    const place = placeWords(placeOf(layout, [x, y]));
    const other = line.sections?.[0][0] === 'iron' ? 'iron' : 'rubber';
    const made = line.from === undefined ? other : madeOf(line);
    return word('drill.name.line', { made: word(`drill.made.${made}`), diameter, place });
  }
  const part = layout.parts.find((one) => one.id === id);
  if (!part) return id;
  const place = placeWords(placeOf(layout, middleOf(part)));
  const known = bay.loopParts[id];
  return known
    ? word('drill.name.part', { part: word(`drill.part.${known}`), place })
    : word('drill.name.cover', { place });
}

function capWords(bay: DrillBay, portId: string): string {
  const letter = capLetter(bay, portId);
  if (letter !== null) return word('drill.cap.lettered', { letter });
  const cap = bay.ports.find(({ id }) => id === portId)?.cap;
  return cap === 'missing' ? word('drill.cap.missing') : word('drill.cap.blank');
}

export function stepName(step: DrillStep): string {
  const place = placeWords(step.place);
  return step.kind === 'part'
    ? word('drill.name.part', { part: word(`drill.part.${step.part}`), place })
    : word('drill.name.line', {
        made: word(`drill.made.${step.made}`),
        diameter: asItStands(step.diameterMm),
        place,
      });
}

/** Where a pipe of another system comes from and goes to; null for what is no such pipe. */
export function otherEnds(bay: DrillBay, id: string): string | null {
  const decoy = bay.decoys.find(({ line }) => line === id);
  return decoy ? word(`drill.decoy.${decoy.kind}`) : null;
}

/** What a choice is called: a side or a port. */
export const choiceName = (bay: DrillBay, choice: string): string => {
  if (choice === 'low') return word('drill.answer.low');
  if (choice === 'high') return word('drill.answer.high');
  return word('drill.answer.port', { letter: letterOf(bay, choice) });
};
