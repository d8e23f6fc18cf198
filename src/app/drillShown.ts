/** What the drill's view is given: the bay without its lifted panels, names of things, marks of trace and answer. */
import type { CapLook } from '../bay/bayFrame';
import type { DrillShown } from '../bay/drill/drillView';
import { isOnLoop } from '../layout/drill/answerOf';
import { capLetter } from '../layout/drill/capLetter';
import type { DrillBay, DrillPort } from '../layout/drill/drill';
import { drillTrace } from '../layout/drill/drillTrace';
import { coverOver } from '../layout/drill/joins';
import { loopLines } from '../layout/trace';
import { thingName } from '../panels/drill/drillWords';

/** A layout is drawn anew only where it is another one: kept by what is lifted. */
let last: { readonly bay: DrillBay; readonly lifted: string; readonly layout: DrillBay['layout'] } | null =
  null;

export function drillShown(
  bay: DrillBay,
  lifted: readonly string[],
  traced: readonly string[],
  isAnswered: boolean,
): DrillShown {
  const layout = layoutWithout(bay, lifted);
  const covered = new Set(bay.ports.map(({ id }) => id).filter((id) => coverOver(bay, id, lifted) !== null));
  const ids = [
    ...bay.ports.map(({ id }) => id),
    ...layout.parts
      .filter(({ id, name }) => name === 'cover' || bay.loopParts[id] !== undefined)
      .map(({ id }) => id),
    ...layout.lines.map(({ id }) => id),
  ].filter((id) => coverOver(bay, id, lifted) === null);
  const told = isAnswered ? sidesOfLines(bay) : { low: [], high: [] };
  return {
    layout,
    ports: Object.fromEntries(bay.ports.map((port) => [port.id, { cap: lookOf(bay, port), strap: false }])),
    covered,
    first: bay.question.kind === 'side' ? bay.question.port : bay.question.ports[0],
    things: ids.map((id) => ({ id, name: thingName(bay, id) })),
    marks: {
      traced: isAnswered ? [] : traced,
      ...told,
      letters: Object.fromEntries(bay.ports.map(({ id, letter }) => [id, letter])),
      sides: isAnswered
        ? Object.fromEntries(bay.ports.flatMap(({ id, side }) => (side ? [[id, side] as const] : [])))
        : {},
    },
  };
}

/** All fittings are of the low side's size, so an H is drawn as the letter that is not theirs. */
function lookOf(bay: DrillBay, { id, cap }: DrillPort): CapLook {
  const letter = capLetter(bay, id);
  if (letter === null) return cap === 'missing' ? 'missing' : 'blank';
  return letter === 'L' ? 'letter' : 'swapped';
}

function layoutWithout(bay: DrillBay, lifted: readonly string[]): DrillBay['layout'] {
  const key = lifted.join();
  if (last?.bay !== bay || last.lifted !== key) {
    const parts = bay.layout.parts.filter(({ id }) => !lifted.includes(id));
    last = { bay, lifted: key, layout: { ...bay.layout, parts } };
  }
  return last.layout;
}

/** Lines on the way with and against the flow from each port, by side. */
function sidesOfLines(bay: DrillBay): { readonly low: readonly string[]; readonly high: readonly string[] } {
  const known = new Set(loopLines(bay.layout).map(({ id }) => id));
  const low = new Set<string>();
  const high = new Set<string>();
  for (const { id } of bay.ports) {
    if (!isOnLoop(bay, id)) continue;
    const { downstream, upstream, side } = drillTrace(bay, id);
    for (const step of [...downstream, ...upstream])
      if (known.has(step.id)) (side === 'low' ? low : high).add(step.id);
  }
  return { low: [...low], high: [...high] };
}
