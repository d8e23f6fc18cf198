/** The shelf: one card a scenario with what a customer would say; at the right one decision, how to take it. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import {
  type DisplayUnits,
  inWords,
  plainNumber,
  writeClock,
  writeTemperature,
} from '../instruments/displayUnits';
import type { Mode } from '../session/corePort';
import { word } from '../words/words';
import { CarOutline } from './CarOutline';
import { Icon } from './Icon';
import { ShelfKeepsNothing } from './KeepsNothing';
import type { ScenarioFacts } from './sessionModel';
import { TopBar } from './TopBar';

export interface BestResult {
  readonly score: number;
  readonly mode: Mode;
  /** Share 0..1 of each of the five domains. */
  readonly domains: readonly number[];
}

export interface Saved {
  readonly scenarioId: string;
  readonly seconds: number;
  /** Of a scenario of one's own, which has no card. */
  readonly ownTitle: string | null;
}

export type ShelfFacts = Omit<ScenarioFacts, 'hints'>;

export interface ShelfProps {
  readonly scenarios: readonly ShelfFacts[];
  readonly units: DisplayUnits;
  readonly best: (scenarioId: string) => BestResult | null;
  readonly saved: Saved | null;
  readonly storageRefused: boolean;
  /** The job that was chosen could not be fetched. */
  readonly notStarted: boolean;
  readonly onOpen: (scenarioId: string, mode: Mode) => void;
  readonly onGoOn: () => void;
  readonly onHome: () => void;
  readonly onHelp: () => void;
  readonly onMenu: () => void;
}

const LEVELS = [1, 2, 3, 4];
const levelName = (level: number): string =>
  [
    word('shelf.levelName.first'),
    word('shelf.levelName.second'),
    word('shelf.levelName.third'),
    word('shelf.levelName.fourth'),
  ][level - 1];
const MODES: readonly Mode[] = ['explore', 'practice', 'assessed'];

export const modeName = (mode: Mode): string =>
  mode === 'explore'
    ? word('app.mode.explore')
    : mode === 'practice'
      ? word('app.mode.practice')
      : word('app.mode.assessed');
const modeNote = (mode: Mode): string =>
  mode === 'explore'
    ? word('shelf.explore')
    : mode === 'practice'
      ? word('shelf.practice')
      : word('shelf.assessed');

function LevelBars(props: { readonly level: number }): JSX.Element {
  return (
    <span class="lvl" aria-hidden="true">
      <For each={LEVELS}>{(level) => <i classList={{ y: level <= props.level }} />}</For>
    </span>
  );
}

/** Five little columns, one a domain, always in the same order. */
function Columns(props: { readonly domains: readonly number[] }): JSX.Element {
  return (
    <span class="dom5">
      <svg width="46" height="22" viewBox="0 0 46 22" aria-hidden="true">
        <For each={props.domains}>
          {(share, index) => (
            <>
              <rect class="bg" x={index() * 9.5} y="0" width="7" height="22" rx="2" />
              <rect class="fg" x={index() * 9.5} y={22 - 22 * share} width="7" height={22 * share} />
            </>
          )}
        </For>
      </svg>
    </span>
  );
}

function Card(props: {
  readonly facts: ShelfFacts;
  readonly shelf: ShelfProps;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}): JSX.Element {
  const facts = props.facts;
  const saved = (): Saved | null => (props.shelf.saved?.scenarioId === facts.id ? props.shelf.saved : null);
  const best = () => props.shelf.best(facts.id);
  return (
    <article class="tag scn">
      <i class="hole" />
      <input
        type="radio"
        name="scenario"
        id={`scenario-${facts.id}`}
        checked={props.chosen}
        onChange={() => props.onChoose()}
      />
      <div class="hd">
        <div>
          <h3>
            <label for={`scenario-${facts.id}`}>{facts.title}</label>
          </h3>
          <span class="xs mut">{facts.vehicle}</span>
        </div>
        <CarOutline body={facts.body} />
      </div>
      <p class="say">{word('shelf.say', { complaint: facts.complaint })}</p>
      <div class="meta">
        <span>
          <Icon name="clock" size={15} /> {word('shelf.minutes', { minutes: plainNumber(facts.minutes) })}
        </span>
        <span>
          <Icon name="therm" size={15} />{' '}
          {inWords(writeTemperature(facts.airTemperatureK, props.shelf.units.temperature))}
        </span>
      </div>
      <div class="best">
        <Show
          when={saved()}
          fallback={
            <Show when={best()} fallback={<span class="mut">{word('shelf.untried')}</span>}>
              {(result) => (
                <>
                  <Columns domains={result().domains} />
                  <span>
                    {word('shelf.best', {
                      score: plainNumber(result().score),
                      mode: modeName(result().mode).toLowerCase(),
                    })}
                  </span>
                </>
              )}
            </Show>
          }
        >
          {(one) => (
            <>
              <span>{word('shelf.saved', { time: writeClock(one().seconds) })}</span>
              <button type="button" class="btn sm" onClick={() => props.shelf.onGoOn()}>
                {word('shelf.goOn')}
              </button>
            </>
          )}
        </Show>
      </div>
    </article>
  );
}

function Detail(props: { readonly facts: ShelfFacts; readonly shelf: ShelfProps }): JSX.Element {
  const [mode, setMode] = createSignal<Mode>('practice');
  const air = (): string =>
    word('shelf.airText', {
      temperature: inWords(writeTemperature(props.facts.airTemperatureK, props.shelf.units.temperature)),
      humidity: plainNumber(props.facts.humidityPercent),
    });
  return (
    <aside class="detail panel" aria-label={word('shelf.chosen')} data-region tabIndex={-1}>
      <div>
        <h2>{props.facts.title}</h2>
        <p class="s mut">{props.facts.vehicle}</p>
      </div>
      <dl class="kv">
        <dt>{word('shelf.deliver')}</dt>
        <dd>
          <For each={props.facts.deliver}>{(delivery) => <div>{delivery.text}</div>}</For>
        </dd>
        <dt>{word('shelf.air')}</dt>
        <dd>{air()}</dd>
        <dt>{word('shelf.need')}</dt>
        <dd>{word('shelf.needText', { minutes: plainNumber(props.facts.minutes) })}</dd>
      </dl>
      <fieldset class="ways">
        <legend>{word('shelf.how')}</legend>
        <For each={MODES}>
          {(one) => (
            <label>
              <input type="radio" name="mode" checked={mode() === one} onChange={() => setMode(one)} />
              <span>
                <b>{modeName(one)}</b>
                <small>{modeNote(one)}</small>
              </span>
            </label>
          )}
        </For>
      </fieldset>
      <div role="status">
        <Show when={props.shelf.notStarted}>
          <p class="slim-note">{word('shelf.notStarted')}</p>
        </Show>
      </div>
      <button type="button" class="btn pri full" onClick={() => props.shelf.onOpen(props.facts.id, mode())}>
        <Icon name="door" size={18} />
        {word('shelf.open')}
        <span class="picked">{props.facts.title}</span>
      </button>
    </aside>
  );
}

export function Shelf(props: ShelfProps): JSX.Element {
  const [chosen, setChosen] = createSignal(props.scenarios[0]?.id ?? '');
  const facts = () => props.scenarios.find((one) => one.id === chosen());
  const levels = () => LEVELS.filter((level) => props.scenarios.some((one) => one.level === level));
  return (
    <>
      <TopBar onHome={props.onHome} onHelp={props.onHelp} onMenu={props.onMenu} />
      <main class="pg shelf" id="main">
        <section aria-label={word('shelf.cards')} data-region tabIndex={-1}>
          <div class="hero">
            <div>
              <h1>{word('shelf.title')}</h1>
              <p class="mut">{word('shelf.lead')}</p>
            </div>
            <nav class="doors" aria-label={word('shelf.doors')}>
              <a class="btn sm" href="?drill=1">
                <Icon name="eye" size={18} />
                {word('shelf.drill')}
              </a>
              <a class="btn sm" href="?card=1">
                <Icon name="doc" size={18} />
                {word('shelf.carCard')}
              </a>
              <a class="btn sm" href="?workshop=1">
                <Icon name="note" size={18} />
                {word('shelf.workshop')}
              </a>
            </nav>
          </div>
          <Show when={props.storageRefused}>
            <ShelfKeepsNothing />
          </Show>
          <Show when={props.saved?.ownTitle ? props.saved : null}>
            {(one) => (
              <p class="slim-note">
                <span>
                  {word('shelf.ownSaved', { title: one().ownTitle ?? '', time: writeClock(one().seconds) })}
                </span>
                <button type="button" class="btn sm" onClick={() => props.onGoOn()}>
                  {word('shelf.goOn')}
                </button>
              </p>
            )}
          </Show>
          <Show when={props.scenarios.length > 0} fallback={<p class="emp">{word('shelf.empty')}</p>}>
            <For each={levels()}>
              {(level) => (
                <section class="level" aria-labelledby={`level-${level}`}>
                  <h2 class="lvl-head" id={`level-${level}`}>
                    <LevelBars level={level} />
                    {levelName(level)}
                  </h2>
                  <div class="cards">
                    <For each={props.scenarios.filter((one) => one.level === level)}>
                      {(one) => (
                        <Card
                          facts={one}
                          shelf={props}
                          chosen={one.id === chosen()}
                          onChoose={() => setChosen(one.id)}
                        />
                      )}
                    </For>
                  </div>
                </section>
              )}
            </For>
          </Show>
          <p class="xs mut invented">{word('shelf.invented')}</p>
        </section>
        <Show when={facts()}>{(one) => <Detail facts={one()} shelf={props} />}</Show>
      </main>
    </>
  );
}
