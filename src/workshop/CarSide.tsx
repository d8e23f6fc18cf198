/** The right side of the workshop: what the car does that the text describes. */
import type { JSX } from 'solid-js';
import type { DisplayUnits } from '../instruments/displayUnits';
import type { CarLinks } from './carLinks';
import type { Checked } from './checked';

export interface CarSideProps {
  /** The text as it stands now. */
  readonly text: () => string;
  /** What was last found in it; null before anything was. */
  readonly checked: () => Checked | null;
  readonly units: DisplayUnits;
  readonly links: CarLinks;
}

export function CarSide(_props: CarSideProps): JSX.Element {
  return <section class="ws-car" />;
}
