/**
 * The last ten minutes of what the gauges read, as a strip chart (canvas). It keeps one sample a job second and forgets
 * the rest; its data live here, not in the core.
 */
import { createEffect, type JSX, onCleanup, onMount } from 'solid-js';
import { word } from '../words/words';
import { paPerUnit, plainNumber } from '../instruments/displayUnits';
import { makeStrip, type Strip } from '../instruments/stripChart';
import type { SessionModel } from './sessionModel';

const MINUTES = 10;

export function LiveStrip(props: { readonly session: SessionModel; readonly channels: readonly string[] }): JSX.Element {
  let host: HTMLDivElement | undefined;
  let strip: Strip | undefined;
  onMount(() => {
    if (host) strip = makeStrip(host, props.channels.length, MINUTES * 60);
  });
  onCleanup(() => strip?.dispose());
  createEffect(() => {
    const seconds = props.session.clock().seconds;
    const unit = paPerUnit[props.session.units().pressure];
    strip?.add(seconds, props.channels.map((channel) => props.session.signal(channel) / unit));
  });
  const names = (): string => props.channels.map((id) => props.session.nameOf(id.split('.')[0])).join(', ');
  return (
    <div class="strip" role="img" aria-label={word('instrument.strip.label', { minutes: plainNumber(MINUTES), lanes: names() })}>
      <div ref={host} />
    </div>
  );
}
