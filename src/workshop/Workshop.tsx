/** The workshop: at the left the text of a scenario, at the right the car it describes. */
import { createSignal, type JSX } from 'solid-js';
import type { DisplayUnits } from '../instruments/displayUnits';
import { word } from '../words/words';
import { CarSide } from './CarSide';
import type { CarLinks } from './carLinks';
import type { Checked } from './checked';

export interface WorkshopProps {
  readonly language: string;
  readonly units: DisplayUnits;
  readonly links: CarLinks;
}

export function Workshop(props: WorkshopProps): JSX.Element {
  const [text] = createSignal('');
  const [checked] = createSignal<Checked | null>(null);
  return (
    <main class="ws" id="main">
      <section class="panel ws-text" aria-label={word('workshop.text')} data-region tabIndex={-1} />
      <CarSide text={text} checked={checked} units={props.units} links={props.links} />
    </main>
  );
}
