/** What is wrong: one cause out of those that fit this car, how sure, what stands on the card; or a part to replace. */
import { createSignal, For, type JSX } from 'solid-js';
import { FAULT_GROUPS, type FaultGroup } from '../faults/registry';
import { plainNumber } from '../instruments/displayUnits';
import { NOTHING_WRONG } from '../plant/faultBook';
import { nameOf } from '../twin/nameOf';
import { word } from '../words/words';
import { Fold } from './Fold';
import { Form } from './Form';
import { Findings } from './JobCard';
import type { SessionModel } from './sessionModel';

type Sure = 'sure' | 'likely' | 'open';

const SURE: readonly (readonly [Sure, () => string, () => string])[] = [
  ['sure', () => word('panels.cause.isSure'), () => word('panels.cause.isSureSub')],
  ['likely', () => word('panels.cause.likely'), () => word('panels.cause.likelySub')],
  ['open', () => word('panels.cause.open'), () => word('panels.cause.openSub')],
];

function HowSure(props: { readonly value: Sure; readonly onChoose: (value: Sure) => void }): JSX.Element {
  return (
    <fieldset class="fs">
      <legend>{word('panels.cause.sure')}</legend>
      <div class="seg3">
        <For each={SURE}>
          {([value, name, sub]) => (
            <button
              type="button"
              classList={{ on: props.value === value }}
              aria-pressed={props.value === value}
              onClick={() => props.onChoose(value)}
            >
              <b>{name()}</b>
              <small>{sub()}</small>
            </button>
          )}
        </For>
      </div>
    </fieldset>
  );
}

function Replace(props: { readonly session: SessionModel }): JSX.Element {
  return (
    <Fold title={word('panels.cause.replace')}>
      <p class="s mut">{word('panels.cause.replaceSub')}</p>
      <div class="pick">
        <For each={props.session.choices('replaceable')}>
          {(part) => (
            <button type="button" class="chip" onClick={() => props.session.send({ do: 'replace', part })}>
              {word('panels.cause.doReplace', { part: nameOf(part) })}
            </button>
          )}
        </For>
      </div>
    </Fold>
  );
}

/** Nothing wrong stands first; the rest folded in the groups of the registry, those that fit this car. */
function Causes(props: {
  readonly session: SessionModel;
  readonly value: string | null;
  readonly onChoose: (id: string) => void;
}): JSX.Element {
  const here = new Set(props.session.choices('cause'));
  const groups = (Object.keys(FAULT_GROUPS) as FaultGroup[]).map((group) => ({
    group,
    ids: FAULT_GROUPS[group].map(({ id }) => id).filter((id) => here.has(id)),
  }));
  const choice = (id: string): JSX.Element => (
    <label>
      <input type="radio" name="cause" checked={props.value === id} onChange={() => props.onChoose(id)} />
      <span>{props.session.nameOf(id)}</span>
    </label>
  );
  return (
    <>
      <fieldset class="fs">
        <legend>{word('panels.cause.which')}</legend>
        <div class="rad">{choice(NOTHING_WRONG)}</div>
      </fieldset>
      <div class="tucks">
        <For each={groups.filter(({ ids }) => ids.length > 0)}>
          {({ group, ids }) => (
            <details class="tuck group" open={props.value !== null && ids.includes(props.value)}>
              <summary>
                {word(`panels.cause.group.${group}`)} <span class="s mut">{plainNumber(ids.length)}</span>
              </summary>
              <fieldset class="fs" aria-label={word(`panels.cause.group.${group}`)}>
                <div class="rad">
                  <For each={ids}>{choice}</For>
                </div>
              </fieldset>
            </details>
          )}
        </For>
      </div>
    </>
  );
}

export function CauseForm(props: {
  readonly session: SessionModel;
  readonly onClose: () => void;
}): JSX.Element {
  const [cause, setCause] = createSignal<string | null>(null);
  const [sure, setSure] = createSignal<Sure>('likely');
  const write = (): void => {
    const chosen = cause();
    if (chosen === null) return;
    props.session.send({ do: 'diagnose', cause: chosen, sure: sure() });
    props.onClose();
  };
  return (
    <Form
      title={word('panels.cause.title')}
      sub={word('panels.cause.sub')}
      onClose={props.onClose}
      foot={
        <>
          <span class="prev">
            <span class="xs mut">{word('panels.finding.goesOn')}</span>
            <b>{cause() === null ? word('panels.cause.pick') : props.session.nameOf(cause() ?? '')}</b>
          </span>
          <button type="button" class="btn" onClick={() => props.onClose()}>
            {word('panels.finding.notYet')}
          </button>
          <button type="button" class="btn pri" aria-disabled={cause() === null} onClick={write}>
            {word('panels.cause.write')}
          </button>
        </>
      }
    >
      <Replace session={props.session} />
      <div class="two2">
        <div>
          <Causes session={props.session} value={cause()} onChoose={setCause} />
        </div>
        <div>
          <HowSure value={sure()} onChoose={setSure} />
          <fieldset class="fs">
            <legend>{word('panels.cause.evidence')}</legend>
            <Findings session={props.session} />
          </fieldset>
        </div>
      </div>
    </Form>
  );
}
