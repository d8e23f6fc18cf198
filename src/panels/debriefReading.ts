/** Where a reader of the debrief stands: first part, the plot, nothing marked. It is made once, and outlives the page. */
import { createSignal } from 'solid-js';
import type { DebriefReading, DebriefShown, Part, Place } from './debriefModel';

export function debriefReading(): DebriefReading {
  const [part, setPart] = createSignal<Part>('happened');
  const [shown, setShown] = createSignal<DebriefShown>('plot');
  const [place, setPlace] = createSignal<Place | null>(null);
  const [chosen, setChosen] = createSignal<number | null>(null);
  return { part, setPart, shown, setShown, place, setPlace, chosen, setChosen };
}
