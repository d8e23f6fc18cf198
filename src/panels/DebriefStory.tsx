/** First part of the debrief: how the job went, without a score, and the moments worth going to. */
import { For, type JSX, Show } from 'solid-js';
import { inWords, writeClock, writeMass, writeTemperature } from '../instruments/displayUnits';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import { commandWords } from './commandWords';
import { valueAt } from './DebriefNumbers';
import type { DebriefData, DebriefModel, Place } from './debriefModel';

/** First of each of these is worth going to; of the last four each one. */
const FIRSTS: readonly string[] = ['couple', 'engine', 'tap', 'can-valve', 'attach', 'open-loop', 'purge'];
const ALL: readonly string[] = ['decide', 'diagnose', 'replace', 'finish'];
const MOST_MOMENTS = 12;

/** What happened beside the score: trips, going back, hints. */
function besides({ trips, wentBack, hintsOpened }: DebriefData): string[] {
  const told = trips.map(({ id, count }) => {
    const what = word(`debrief.trip.${id}`);
    return count > 1 ? word('debrief.times', { what, count: String(count) }) : what;
  });
  const said: string[] = [];
  if (told.length > 0) said.push(word('debrief.happenedToo', { list: told.join(word('debrief.join')) }));
  if (wentBack === 1) said.push(word('debrief.wentBackOnce'));
  if (wentBack > 1) said.push(word('debrief.wentBack', { count: String(wentBack) }));
  if (hintsOpened > 0) said.push(word('debrief.hints', { count: String(hintsOpened) }));
  return said;
}

export function subtitle({ data, modeName }: DebriefModel): string {
  const minutes = String(Math.round(data.lastStep / STEPS_PER_SECOND / 60));
  return word('debrief.sub', { mode: modeName, seed: String(data.seed), minutes });
}

function endWords({ data, units }: DebriefModel): string {
  const endS = data.lastStep / STEPS_PER_SECOND;
  const charge = inWords(writeMass(valueAt(data, 'charge', endS), units.mass));
  const label = inWords(writeMass(data.labelKg, units.mass));
  const ventK = valueAt(data, 'vent', endS);
  if (Number.isNaN(ventK)) return word('debrief.story.endUnread', { charge, label });
  const vent = inWords(writeTemperature(ventK, units.temperature, 1));
  return word('debrief.story.end', { charge, label, vent });
}

interface Moment {
  readonly step: number;
  readonly words: string;
  readonly deed: number | null;
}

function momentsOf({ data, nameOf }: DebriefModel): Moment[] {
  const seen = new Set<string>();
  const deeds = data.actions.flatMap(({ step, command, logNumber }): Moment[] => {
    const isFirst = FIRSTS.includes(command.do) && !seen.has(command.do);
    seen.add(command.do);
    if (!isFirst && !ALL.includes(command.do)) return [];
    return [{ step, words: commandWords(command, nameOf), deed: logNumber }];
  });
  const trips = data.trips.map(
    ({ id, firstStep }): Moment => ({
      step: firstStep,
      words: capital(word(`debrief.trip.${id}`)),
      deed: null,
    }),
  );
  return [...deeds, ...trips].sort((a, b) => a.step - b.step).slice(0, MOST_MOMENTS);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function GoToMoment(props: {
  readonly debrief: DebriefModel;
  readonly onShow: (place: Place) => void;
}): JSX.Element {
  return (
    <section class="panel mts" aria-label={word('debrief.story.moments')} data-region tabIndex={-1}>
      <h2>{word('debrief.story.moments')}</h2>
      <ul>
        <For
          each={momentsOf(props.debrief)}
          fallback={<li class="s mut">{word('debrief.story.nothing')}</li>}
        >
          {({ step, words, deed }) => (
            <li>
              <button type="button" onClick={() => props.onShow({ seconds: step / STEPS_PER_SECOND, deed })}>
                <time>{writeClock(step / STEPS_PER_SECOND)}</time>
                <span>{words}</span>
              </button>
            </li>
          )}
        </For>
      </ul>
    </section>
  );
}

export function DebriefStory(props: {
  readonly debrief: DebriefModel;
  readonly onShow: (place: Place) => void;
  readonly identity: JSX.Element;
}): JSX.Element {
  return (
    <>
      <section class="panel sc" aria-label={word('debrief.story.title')} data-region tabIndex={-1}>
        <h2>{word('debrief.story.title')}</h2>
        <p class="told" aria-hidden="true">
          {props.debrief.title}
        </p>
        <p class="s">{subtitle(props.debrief)}</p>
        <Show when={props.debrief.data.traces.length > 0}>
          <p class="s">{endWords(props.debrief)}</p>
        </Show>
        <For each={besides(props.debrief.data)}>{(sentence) => <p class="s mut">{sentence}</p>}</For>
        {props.identity}
      </section>
      <GoToMoment debrief={props.debrief} onShow={props.onShow} />
    </>
  );
}
