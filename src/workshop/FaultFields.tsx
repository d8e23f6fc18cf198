/** The faults of the car: which, and how bad, with what that means in the quantity it changes. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { word } from '../words/words';
import type { FaultRow, FormValues } from './edit/formOf';
import type { Wish } from './edit/wish';
import type { FaultWord } from './reader/vocabulary';
import { type FaultLot, siftFaults } from './siftFaults';
import type { Written } from './written';

const STEP = 0.05;
const USUAL_SEVERITY = 0.5;
const MOST_FAULTS = 4;

interface FieldsProps {
  readonly written: Written;
  readonly values: FormValues;
  readonly onChange: (wish: Wish) => void;
}

const groupName = (group: FaultLot['group']): string => word(`panels.cause.group.${group}`);
const countIn = (lots: readonly FaultLot[]): number =>
  lots.reduce((sum, { faults }) => sum + faults.length, 0);

export function FaultFields(props: FieldsProps): JSX.Element {
  const [typed, setTyped] = createSignal('');
  const possible = (): readonly FaultWord[] =>
    (props.written.vocabulary()?.faults ?? []).filter(({ vehicles }) =>
      vehicles.includes(props.values.vehicle),
    );
  const free = (): readonly FaultWord[] => {
    const there = props.values.faults.map(({ fault }) => fault);
    return possible().filter(
      ({ id, excludes }) => !there.includes(id) && !excludes.some((one) => there.includes(one)),
    );
  };
  const lots = (): readonly FaultLot[] => siftFaults(free(), typed());
  const found = (): string =>
    typed().trim() === ''
      ? ''
      : word('workshop.form.found', { count: plainNumber(countIn(lots())), all: plainNumber(free().length) });
  return (
    <>
      <For each={props.values.faults.map((_, index) => index)}>
        {(index) => (
          <Fault
            row={props.values.faults[index]}
            possible={possible()}
            typed={typed()}
            known={props.written.vocabulary()?.faults ?? []}
            vehicle={props.values.vehicle}
            at={index}
            onChange={props.onChange}
          />
        )}
      </For>
      <Show when={props.values.faults.length < MOST_FAULTS}>
        <label class="ws-f ws-add">
          <span>
            {props.values.faults.length === 0 ? word('workshop.form.sound') : word('workshop.form.more')}
          </span>
          <select
            value=""
            onChange={(event) => {
              const id = event.currentTarget.value;
              event.currentTarget.value = '';
              if (id !== '') props.onChange({ add: 'fault', id, severity: USUAL_SEVERITY });
            }}
          >
            <option value="">{word('workshop.form.addFault')}</option>
            <Lots lots={lots()} chosen="" />
          </select>
        </label>
      </Show>
      <label class="ws-f ws-sift">
        <span>
          {word('workshop.form.find')}{' '}
          <span class="mut" role="status">
            {found()}
          </span>
        </span>
        <input
          type="search"
          autocomplete="off"
          value={typed()}
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
    </>
  );
}

function Lots(props: { readonly lots: readonly FaultLot[]; readonly chosen: string }): JSX.Element {
  return (
    <For each={props.lots}>
      {({ group, faults }) => (
        <optgroup label={groupName(group)}>
          <For each={faults}>
            {({ id, title }) => (
              <option value={id} selected={id === props.chosen}>
                {title}
              </option>
            )}
          </For>
        </optgroup>
      )}
    </For>
  );
}

interface FaultProps {
  readonly row: FaultRow;
  readonly possible: readonly FaultWord[];
  /** What is looked for among them. */
  readonly typed: string;
  readonly known: readonly FaultWord[];
  readonly vehicle: string;
  readonly at: number;
  readonly onChange: (wish: Wish) => void;
}

function Fault(props: FaultProps): JSX.Element {
  /** While the slider is moved; null when it rests. */
  const [moved, setMoved] = createSignal<number | null>(null);
  const severity = (): number => moved() ?? props.row.severity ?? 0;
  const fault = (): FaultWord | undefined => props.known.find(({ id }) => id === props.row.fault);
  const isPossible = (): boolean => props.possible.some(({ id }) => id === props.row.fault);
  const mending = (fault: string): readonly string[] =>
    props.known.find(({ id }) => id === fault)?.mendedBy[props.vehicle] ?? [];
  const change = (to: string): void => {
    const parts = { before: mending(props.row.fault), after: mending(to) };
    props.onChange({ set: 'fault', at: props.at, to, parts });
  };
  const figure = (): string => {
    const there = fault();
    if (!there) return '';
    return `${there.quantity}: ${there.figures[Math.round(severity() / STEP)] ?? ''}`;
  };
  return (
    <div class="ws-fault">
      <label class="ws-f">
        <span>{word('workshop.form.fault', { number: String(props.at + 1) })}</span>
        <select onChange={(event) => change(event.currentTarget.value)}>
          <Show when={!isPossible()}>
            <option value={props.row.fault} selected>
              {word('workshop.form.notHere', { fault: fault()?.title ?? props.row.fault })}
            </option>
          </Show>
          <Lots lots={siftFaults(props.possible, props.typed, [props.row.fault])} chosen={props.row.fault} />
        </select>
      </label>
      <label class="ws-f">
        <span>
          {word('workshop.form.severity')} <span class="mut">{figure()}</span>
        </span>
        <input
          type="range"
          min={0}
          max={1}
          step={STEP}
          value={severity()}
          aria-valuetext={figure()}
          onInput={(event) => setMoved(Number(event.currentTarget.value))}
          onChange={(event) => {
            const to = Math.round(Number(event.currentTarget.value) * 100) / 100;
            setMoved(null);
            if (to !== props.row.severity) props.onChange({ set: 'severity', at: props.at, to });
          }}
        />
      </label>
      <button
        type="button"
        class="btn sm qt"
        aria-label={word('workshop.form.removeFault', { fault: fault()?.title ?? props.row.fault })}
        onClick={() => props.onChange({ remove: 'fault', at: props.at })}
      >
        {word('workshop.form.remove')}
      </button>
    </div>
  );
}
