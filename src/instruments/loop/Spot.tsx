/**
 * Something in a drawing that can be pressed: one tab stop a drawing, arrow keys go along the loop, Enter or Space chooses.
 */
import { type JSX, Show } from 'solid-js';
import { word } from '../../words/words';
import { besides, SPOTS, type SpotId } from './spots';

export interface SpotChoice {
  readonly chosen: SpotId | null;
  readonly onChoose: (spot: SpotId | null) => void;
}

export function spotName(spot: SpotId): string {
  const names: Readonly<Record<SpotId, () => string>> = {
    p1: () => word('instrument.spot.p1'),
    compressor: () => word('instrument.spot.compressor'),
    p2: () => word('instrument.spot.p2'),
    condenser: () => word('instrument.spot.condenser'),
    p3: () => word('instrument.spot.p3'),
    metering: () => word('instrument.spot.metering'),
    p4: () => word('instrument.spot.p4'),
    evaporator: () => word('instrument.spot.evaporator'),
  };
  return names[spot]();
}

const STEP_OF: Readonly<Record<string, 1 | -1>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
};

export function Spot(props: {
  readonly id: SpotId;
  /** None where the picture is only looked at. */
  readonly choice: SpotChoice | undefined;
  readonly transform?: string;
  readonly children: JSX.Element;
}): JSX.Element {
  const isChosen = (): boolean => props.choice?.chosen === props.id;
  const press = (): void => props.choice?.onChoose(isChosen() ? null : props.id);
  const onKeyDown = (event: KeyboardEvent & { currentTarget: SVGGElement }): void => {
    const step = STEP_OF[event.key];
    if (step !== undefined) {
      const next = besides(props.id, step);
      event.currentTarget.ownerSVGElement?.querySelector<SVGGElement>(`[data-spot="${next}"]`)?.focus();
      props.choice?.onChoose(next);
    } else if (event.key === 'Enter' || event.key === ' ') press();
    else return;
    event.preventDefault();
  };
  return (
    <Show when={props.choice} fallback={<g transform={props.transform}>{props.children}</g>}>
      {(choice) => (
        <g
          role="button"
          data-spot={props.id}
          class="spot"
          classList={{ on: isChosen() }}
          transform={props.transform}
          tabindex={props.id === (choice().chosen ?? SPOTS[0]) ? 0 : -1}
          aria-pressed={isChosen()}
          aria-label={spotName(props.id)}
          onClick={press}
          onKeyDown={onKeyDown}
        >
          {props.children}
        </g>
      )}
    </Show>
  );
}
