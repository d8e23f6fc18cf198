/** The debrief as a page: asks the worker for it, keeps the best result, offers the session file. */
import { createEffect, onMount, Show } from 'solid-js';
import { Debrief } from '../panels/Debrief';
import { Loading } from '../panels/Loading';
import { modeName } from '../panels/Shelf';
import type { SessionFile } from '../session/sessionFileText';
import { word } from '../words/words';
import { keepResult } from './bestResults';
import { forgetLog, keepScored } from './savedSession';
import { saveFile } from './saveFile';
import type { RunningSession } from './session';
import { settings } from './settings';

export interface DebriefPageProps {
  readonly session: RunningSession;
  readonly onHome: () => void;
  readonly onAgain: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

export default function DebriefPage(props: DebriefPageProps) {
  const { facts } = props.session.model;
  onMount(() => {
    if (props.session.debrief() === null) props.session.askDebrief();
  });
  const leave = (go: () => void) => (): void => void forgetLog().then(go);
  return (
    <Show when={props.session.debrief()} fallback={<Loading title={word('app.loading.debrief')} />}>
      {(data) => {
        createEffect(() => {
          keepResult(facts.id, data());
          void keepScored(JSON.parse(data().file) as SessionFile);
        });
        return (
          <Debrief
            debrief={{
              title: facts.title,
              modeName: modeName(data().mode),
              data: data(),
              get units() {
                return settings().units;
              },
              saturation: props.session.opened.saturation,
              nameOf: props.session.model.nameOf,
            }}
            onSave={() => saveFile(`${facts.id}-${data().seed}.session.json`, data().file)}
            onAgain={leave(props.onAgain)}
            onHome={leave(props.onHome)}
            onMenu={props.onMenu}
            onHelp={props.onHelp}
          />
        );
      }}
    </Show>
  );
}
