/** What can be done to a part and its joints where they are looked at: undo, do up, put new in, clean. */
import { For, type JSX, Show } from 'solid-js';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

interface Place {
  readonly session: SessionModel;
  readonly id: string;
}

function OpenAndShut(props: Place): JSX.Element {
  const isOpen = (): boolean => props.session.view().opened.includes(props.id);
  const press = (): void => props.session.send({ do: isOpen() ? 'close-loop' : 'open-loop', part: props.id });
  return (
    <button type="button" class="btn sm" onClick={press}>
      {isOpen() ? word('panels.repair.doUp') : word('panels.repair.undo')}
    </button>
  );
}

function NewOne(props: Place & { readonly label: string }): JSX.Element {
  return (
    <Show when={props.session.choices('replaceable').includes(props.id)}>
      <button
        type="button"
        class="btn sm"
        onClick={() => props.session.send({ do: 'replace', part: props.id })}
      >
        {props.label}
      </button>
    </Show>
  );
}

/** Joints are told by line and part, in one id; a line of such a name is none. */
function isJointOf({ session, id }: Place, place: string): boolean {
  if (session.layout.lines.some((line) => line.id === place)) return false;
  return place.startsWith(`${id}-`) || place.endsWith(`-${id}`);
}

export function RepairRows(props: Place): JSX.Element {
  const { session } = props;
  const inLoop = (): readonly string[] => session.choices('loop-place');
  const joints = () => inLoop().filter((place) => isJointOf(props, place));
  const cleanable = (): boolean => session.choices('cleanable').includes(props.id);
  const isReplaceable = (): boolean => session.choices('replaceable').includes(props.id);
  const isInLoop = (): boolean => inLoop().includes(props.id);
  return (
    <>
      <Show when={isInLoop() || isReplaceable() || cleanable()}>
        <div class="row wrap">
          <Show when={isInLoop()}>
            <OpenAndShut session={session} id={props.id} />
          </Show>
          <NewOne
            session={session}
            id={props.id}
            label={word('panels.cause.doReplace', { part: session.nameOf(props.id) })}
          />
          <Show when={cleanable()}>
            <button
              type="button"
              class="btn sm"
              onClick={() => session.send({ do: 'clean', part: props.id })}
            >
              {word('panels.repair.clean')}
            </button>
          </Show>
        </div>
      </Show>
      <For each={joints()}>
        {(joint) => (
          <div class="stack">
            <span class="s">{session.nameOf(joint)}</span>
            <div class="row wrap">
              <OpenAndShut session={session} id={joint} />
              <NewOne session={session} id={joint} label={word('panels.repair.newSeal')} />
            </div>
          </div>
        )}
      </For>
    </>
  );
}
