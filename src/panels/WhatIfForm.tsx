/** One action chosen: leave it out, give it earlier or later, or give it with another value. */
import { For, type JSX, Show } from 'solid-js';
import type { ArgSpec } from '../plant/commandSpecs';
import { argsOf } from '../session/commandShape';
import { isWordId, say, word } from '../words/words';
import { actionWords } from './actionWords';
import { argumentWords } from './argumentWords';
import type { DebriefAction, DebriefModel } from './debriefModel';
import { asItWas, editsOf, isFixed, leftOut, MOVE_STEPS, movedBy, withValue } from './whatIfEdits';
import type { WhatIfModel } from './whatIfModel';

export interface WhatIfFormProps {
  readonly debrief: DebriefModel;
  readonly whatIf: WhatIfModel;
  readonly action: DebriefAction;
}

type Value = Extract<ArgSpec, { kind: 'whole' | 'choice' }>;

function valuesOf(action: DebriefAction): { readonly name: string; readonly spec: Value }[] {
  return argsOf(action.command.do).flatMap(([name, spec]) =>
    spec.kind === 'whole' || spec.kind === 'choice' ? [{ name, spec }] : [],
  );
}

function argWords(name: string): string {
  const id = `debrief.whatIf.arg.${name}`;
  return isWordId(id) ? say({ id }) : word('debrief.whatIf.arg.choice');
}

function ValueField(props: WhatIfFormProps & { readonly name: string; readonly spec: Value }): JSX.Element {
  const own = (): string => String(props.action.command[props.name]);
  const now = (): string => editsOf(props.whatIf.edits(), props.action.logNumber).values[props.name] ?? own();
  const id = (): string => `wi-${props.action.logNumber}-${props.name}`;
  const set = (value: string): void => {
    const { edits, setEdits } = props.whatIf;
    setEdits(withValue(edits(), props.action.logNumber, props.name, value === own() ? null : value));
  };
  return (
    <div class="wi-value">
      <label for={id()}>{argWords(props.name)}</label>
      <Show
        when={props.spec.kind === 'choice' && props.spec}
        fallback={
          <input
            id={id()}
            type="number"
            min={(props.spec as Extract<Value, { kind: 'whole' }>).min}
            max={(props.spec as Extract<Value, { kind: 'whole' }>).max}
            step={(props.spec as Extract<Value, { kind: 'whole' }>).step}
            value={now()}
            onChange={(event) => set(event.currentTarget.value)}
          />
        }
      >
        {(choice) => (
          <select id={id()} value={now()} onChange={(event) => set(event.currentTarget.value)}>
            <For each={choice().of}>
              {(option) => (
                <option value={option}>
                  {argumentWords(props.action.command, props.name, option, props.debrief.nameOf)}
                </option>
              )}
            </For>
          </select>
        )}
      </Show>
    </div>
  );
}

export function WhatIfForm(props: WhatIfFormProps): JSX.Element {
  const number = (): number => props.action.logNumber;
  const own = () => editsOf(props.whatIf.edits(), number());
  const set = (edits: ReturnType<WhatIfModel['edits']>): void => props.whatIf.setEdits(edits);
  const move = (bySteps: number): void => set(movedBy(props.whatIf.edits(), number(), bySteps));
  return (
    <div class="wi-form" role="group" aria-label={actionWords(props.action, props.debrief.nameOf)}>
      <Show
        when={!isFixed(props.action.command)}
        fallback={<p class="s mut">{word('debrief.whatIf.unchangeable')}</p>}
      >
        <button
          type="button"
          class="btn sm"
          aria-pressed={own().isDropped}
          onClick={() =>
            set(
              own().isDropped
                ? asItWas(props.whatIf.edits(), number())
                : leftOut(props.whatIf.edits(), number()),
            )
          }
        >
          {own().isDropped ? word('debrief.whatIf.putBack') : word('debrief.whatIf.leaveOut')}
        </button>
        <button type="button" class="btn sm" onClick={() => move(-MOVE_STEPS)}>
          {word('debrief.whatIf.earlier')}
        </button>
        <button type="button" class="btn sm" onClick={() => move(MOVE_STEPS)}>
          {word('debrief.whatIf.later')}
        </button>
        <For each={valuesOf(props.action)}>
          {({ name, spec }) => <ValueField {...props} name={name} spec={spec} />}
        </For>
      </Show>
    </div>
  );
}
