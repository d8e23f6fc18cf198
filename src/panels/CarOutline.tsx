/** A car from the side in one line, by its kind of body. */
import type { JSX } from 'solid-js';
import type { ScenarioFacts } from './sessionModel';

const OUTLINES = {
  pickup: 'M4 34v-9l16-3 7-10q1-2 4-2h17q3 0 3 3v9h41v12',
  van: 'M4 34v-9q0-2 3-3l9-12q2-4 7-4h61q6 0 6 6v22',
  hatch: 'M6 34v-8l10-3 10-11q2-2 5-2h25q4 0 7 3l9 10 12 4q4 1 4 5v2',
  sedan: 'M4 34v-7q0-3 4-4l12-2 12-9q2-2 5-2h18q3 0 6 2l12 9 13 3q4 1 4 4v6',
} as const;

export function CarOutline(props: { readonly body: ScenarioFacts['body'] }): JSX.Element {
  return (
    <svg viewBox="0 0 96 44" class="carsil" aria-hidden="true">
      <path d={OUTLINES[props.body]} />
      <circle cx="22" cy="34" r="7" />
      <circle cx="72" cy="34" r="7" />
      <path d="M29 34h36" />
    </svg>
  );
}
