/** How far a session that is tried otherwise has come, and a way to stop it; seen and not spoken, for it changes all the time. */
import { type JSX, Show } from 'solid-js';
import { writeClock } from '../instruments/displayUnits';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import { ShareDone } from './ShareDone';
import type { WhatIfModel } from './whatIfModel';

export function WhatIfProgress(props: {
  readonly whatIf: WhatIfModel;
  readonly lastStep: number;
}): JSX.Element {
  const isRunning = (): boolean => props.whatIf.phase() === 'running';
  const isUnderWay = (): boolean => isRunning() || props.whatIf.phase() === 'stopped';
  const cameToS = (): number => props.whatIf.traces()?.[0].seconds.at(-1) ?? 0;
  const endS = (): number => Math.max(props.lastStep / STEPS_PER_SECOND, cameToS());
  const cameTo = (): string =>
    word('debrief.whatIf.cameTo', { time: writeClock(cameToS()), end: writeClock(endS()) });
  return (
    <Show when={isUnderWay()}>
      <div class="wi-run">
        <ShareDone label={cameTo()} share={cameToS() / Math.max(1, endS())} />
        <span class="s" aria-hidden="true">
          {cameTo()}
        </span>
        <button
          type="button"
          class="btn sm"
          onClick={() => (isRunning() ? props.whatIf.stop() : props.whatIf.goOn())}
        >
          {isRunning() ? word('debrief.whatIf.stop') : word('debrief.whatIf.goOn')}
        </button>
      </div>
    </Show>
  );
}
