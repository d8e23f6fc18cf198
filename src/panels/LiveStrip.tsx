/** The last ten minutes of what a gauge read, as a strip chart (canvas) in the reader's unit. */
import { createEffect, type JSX, onCleanup, onMount } from 'solid-js';
import { paPerUnit, plainNumber } from '../instruments/displayUnits';
import { makeStrip, type Strip } from '../instruments/stripChart';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

const MINUTES = 10;

export function LiveStrip(props: { readonly session: SessionModel; readonly channel: string }): JSX.Element {
  let host: HTMLDivElement | undefined;
  let strip: Strip | undefined;
  onMount(() => {
    if (host) strip = makeStrip(host, MINUTES * 60);
  });
  onCleanup(() => strip?.dispose());
  createEffect(() => {
    const second = Math.floor(props.session.clock().seconds);
    const unit = paPerUnit[props.session.units().pressure];
    const { seconds, values } = props.session.history(props.channel);
    strip?.show(
      second,
      seconds,
      values.map((value) => value / unit),
    );
  });
  const name = (): string => props.session.nameOf(props.channel.split('.')[0]);
  return (
    <div
      class="strip"
      role="img"
      aria-label={word('instrument.strip.label', { minutes: plainNumber(MINUTES), lanes: name() })}
    >
      <div ref={host} />
    </div>
  );
}
