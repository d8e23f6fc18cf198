/**
 * An action as a pill: number, words, time, and what was changed about it. Delete leaves it out, Alt with an arrow moves it
 * by ten seconds, Escape puts it back; dragging moves it too, ten seconds for each 12 px.
 */
import { createSignal, type JSX, Show } from 'solid-js';
import { writeClock } from '../instruments/displayUnits';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import { actionWords } from './actionWords';
import type { DebriefAction, DebriefModel } from './debriefModel';
import { asItWas, editsOf, isFixed, leftOut, MOVE_STEPS, movedBy } from './whatIfEdits';
import type { WhatIfModel } from './whatIfModel';

export interface WhatIfActionProps {
  readonly debrief: DebriefModel;
  readonly whatIf: WhatIfModel;
  readonly action: DebriefAction;
  readonly isChosen: boolean;
  /** The two runs part at this action. */
  readonly parts: boolean;
  readonly onChoose: () => void;
}

const PX_PER_MOVE = 12;

export function WhatIfAction(props: WhatIfActionProps): JSX.Element {
  const [draggedPx, setDraggedPx] = createSignal<number | null>(null);
  let fromPx = 0;
  const number = (): number => props.action.logNumber;
  const isHeld = (): boolean => isFixed(props.action.command);
  const own = () => editsOf(props.whatIf.edits(), number());
  const draggedSteps = (): number => Math.round((draggedPx() ?? 0) / PX_PER_MOVE) * MOVE_STEPS;
  const isRefused = (): boolean =>
    props.whatIf.told()?.refused.some((refused) => refused.number === number()) ?? false;
  const isChanged = (): boolean => Object.keys(own().values).length > 0;
  const set = (edits: ReturnType<WhatIfModel['edits']>): void => props.whatIf.setEdits(edits);
  const clock = (steps: number): string =>
    writeClock(Math.max(0, props.action.step + steps) / STEPS_PER_SECOND);
  const moved = (): number => own().movedSteps + draggedSteps();
  const time = (): string =>
    moved() === 0 ? clock(0) : word('debrief.whatIf.movedTo', { from: clock(0), to: clock(moved()) });
  const expect = (): void => {
    if (!isHeld() && !own().isDropped) props.whatIf.expect(number());
  };
  const onKey = (event: KeyboardEvent): void => {
    if (isHeld()) return;
    const arrow = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (event.key === 'Delete') set(leftOut(props.whatIf.edits(), number()));
    else if (event.key === 'Escape') set(asItWas(props.whatIf.edits(), number()));
    else if (event.altKey && arrow !== undefined)
      set(movedBy(props.whatIf.edits(), number(), arrow * MOVE_STEPS));
    else return;
    event.preventDefault();
    event.stopPropagation();
    props.onChoose();
  };
  const drop = (): void => {
    const steps = draggedSteps();
    setDraggedPx(null);
    if (steps !== 0) set(movedBy(props.whatIf.edits(), number(), steps));
  };
  const grip = {
    onPointerDown(event: PointerEvent): void {
      if (isHeld()) return;
      fromPx = event.clientX;
      setDraggedPx(0);
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
    },
    onPointerMove(event: PointerEvent): void {
      if (draggedPx() !== null) setDraggedPx(event.clientX - fromPx);
    },
    onPointerUp: drop,
    onPointerCancel: () => setDraggedPx(null),
  };
  return (
    <button
      type="button"
      class="wi-act"
      classList={{
        out: own().isDropped,
        changed: isChanged() || moved() !== 0,
        refused: isRefused(),
        parts: props.parts,
      }}
      aria-pressed={props.isChosen}
      data-action={number()}
      onFocus={expect}
      onPointerEnter={expect}
      onClick={() => props.onChoose()}
      onKeyDown={onKey}
    >
      <b>{props.action.number}</b>
      <span>{actionWords(props.action, props.debrief.nameOf)}</span>
      <small>
        <time>{time()}</time>
        <Show when={own().isDropped}>
          <em>{word('debrief.whatIf.leftOut')}</em>
        </Show>
        <Show when={isChanged()}>
          <em>{word('debrief.whatIf.changed')}</em>
        </Show>
        <Show when={isRefused()}>
          <em>{word('debrief.whatIf.refused')}</em>
        </Show>
        <Show when={props.parts}>
          <em>{word('debrief.whatIf.parts')}</em>
        </Show>
      </small>
      <Show when={!isHeld()}>
        <i class="wi-grip" aria-hidden="true" {...grip} />
      </Show>
    </button>
  );
}
