/** Look-alikes: what nothing on the bench tells apart, and every suspect against the tests of the bench. */
import { createEffect, createMemo, createSignal, For, type JSX, on, onCleanup, Show } from 'solid-js';
import type { ScenarioData } from '../../../shared/schema/scenario';
import { type DisplayUnits, plainNumber } from '../../instruments/displayUnits';
import type { ApartRow, ApartTable, Pair, TestOf } from '../../prover/apartTable';
import { word } from '../../words/words';
import { decisive } from '../car/decisive';
import type { CarLinks } from '../carLinks';
import { shownReading } from './shownReading';
import type { SuspectsTable } from './suspectsTable';

const PAUSE_MS = 800;
const PERCENT = 100;
/** What a person would read first. */
const FIRST = ['low-gauge', 'high-gauge', 'air@centre-vent', 'clutch.turning'];
const FEW = 6;

interface Shown {
  readonly table: ApartTable;
  /** What is wrong with the scenario's own car. */
  readonly own: readonly string[];
  readonly names: CarLinks['names'];
  readonly units: DisplayUnits;
}

export function SuspectsPanel(props: {
  readonly suspects: SuspectsTable;
  readonly ready: ScenarioData | null;
  readonly names: CarLinks['names'];
  readonly units: DisplayUnits;
}): JSX.Element {
  const wanted = createMemo(() => props.ready && decisive(props.ready));
  const isOld = (): boolean => {
    const made = props.suspects.made();
    return wanted() === null || made === null || decisive(made.data) !== wanted();
  };
  createEffect(
    on(wanted, () => {
      if (!isOld()) {
        props.suspects.callOff();
        return;
      }
      const later = setTimeout(() => props.ready && props.suspects.ask(props.ready), PAUSE_MS);
      onCleanup(() => clearTimeout(later));
    }),
  );
  return (
    <section class="panel wc-panel" aria-labelledby="wc-suspects">
      <div class="row wrap">
        <h2 id="wc-suspects">{word('workshopCar.suspects.title')}</h2>
        <Show when={props.suspects.made() && isOld()}>
          <span class="chip">{word('workshopCar.stale')}</span>
        </Show>
      </div>
      <p class="s mut">{word('workshopCar.suspects.about')}</p>
      <Show when={props.suspects.isRunning()}>
        <progress class="wc-bar" aria-label={word('workshopCar.suspects.running')} />
      </Show>
      <Show when={props.suspects.failure()}>
        {(reason) => (
          <p class="s" role="alert">
            {word('workshopCar.failed', { reason: reason() })}
          </p>
        )}
      </Show>
      <Show
        when={props.suspects.made()}
        fallback={
          <p class="emp">
            {props.suspects.isRunning() ? word('workshopCar.suspects.running') : word('workshopCar.empty')}
          </p>
        }
      >
        {(made) => (
          <div class="wc-picture" classList={{ old: isOld() }}>
            <Show when={made().table} fallback={<p>{word('workshopCar.loopEmpty')}</p>}>
              {(table) => (
                <>
                  <Pairs table={table()} own={made().own} names={props.names} units={props.units} />
                  <Readings table={table()} own={made().own} names={props.names} units={props.units} />
                </>
              )}
            </Show>
          </div>
        )}
      </Show>
    </section>
  );
}

const isOwn = ({ a, b }: Pair, own: readonly string[]): boolean => own.includes(a) || own.includes(b);

/** Those that the scenario's own cause is in first, and of them those that ask for other work. */
function Pairs(props: Shown): JSX.Element {
  const rank = (pair: Pair): number => 2 * Number(isOwn(pair, props.own)) + Number(pair.decisionDiffers);
  const pairs = (): Pair[] => [...props.table.pairs].sort((a, b) => rank(b) - rank(a));
  const own = (): number => pairs().filter((pair) => rank(pair) >= 2).length;
  const [isAll, setAll] = createSignal(false);
  const shown = (): Pair[] => (isAll() ? pairs() : pairs().slice(0, Math.max(own(), 3)));
  return (
    <>
      <h3>{word('workshopCar.suspects.pairs')}</h3>
      <Show when={pairs().length > 0} fallback={<p>{word('workshopCar.suspects.noPairs')}</p>}>
        <p>
          {own() > 0
            ? word('workshopCar.suspects.ownPairs')
            : `${word('workshopCar.suspects.ownApart')} ${word('workshopCar.suspects.others')}`}
        </p>
        <ul class="wc-pairs">
          <For each={shown()}>{(pair) => <PairCard {...props} pair={pair} />}</For>
        </ul>
        <Show when={pairs().length > shown().length || isAll()}>
          <button type="button" class="btn sm" aria-expanded={isAll()} onClick={() => setAll(!isAll())}>
            {isAll()
              ? word('workshopCar.suspects.fewer')
              : word('workshopCar.suspects.more', { count: plainNumber(pairs().length - shown().length) })}
          </button>
        </Show>
      </Show>
    </>
  );
}

function PairCard(props: Shown & { readonly pair: Pair }): JSX.Element {
  const testOf = (id: string): TestOf | undefined => props.table.tests.find((test) => test.id === id);
  const would = (): string => {
    const { wouldTell } = props.pair;
    const test = wouldTell && testOf(wouldTell.test);
    if (!wouldTell || !test) return word('workshopCar.suspects.nothingTells');
    return word('workshopCar.suspects.wouldTell', {
      tool: props.names.tool(wouldTell.tool),
      test: props.names.test(wouldTell.test),
      a: shownReading(test, wouldTell.shows[0], props.units, props.names.look),
      b: shownReading(test, wouldTell.shows[1], props.units, props.names.look),
    });
  };
  return (
    <li classList={{ own: isOwn(props.pair, props.own) }}>
      <b>
        {word('workshopCar.suspects.pair', {
          a: props.names.cause(props.pair.a),
          b: props.names.cause(props.pair.b),
        })}
      </b>
      <span class="chip">
        {props.pair.decisionDiffers
          ? word('workshopCar.suspects.otherWork')
          : word('workshopCar.suspects.sameWork')}
      </span>
      <p class="s">
        <Show when={props.pair.best}>
          {(best) => (
            <>
              {word('workshopCar.suspects.best', {
                test: props.names.test(best().test),
                spreads: plainNumber(best().spreads, 1),
              })}{' '}
            </>
          )}
        </Show>
        {would()}
      </p>
    </li>
  );
}

function Readings(props: Shown): JSX.Element {
  const [isAll, setAll] = createSignal(false);
  const onBench = (): number[] =>
    props.table.tests.flatMap((test, at) => (test.isOnBench ? [at] : [])).sort((a, b) => place(a) - place(b));
  const place = (at: number): number => {
    const { id, state } = props.table.tests[at];
    const first = FIRST.findIndex((start) => id.startsWith(`${start}.`));
    const isUsual = first >= 0 && state === 'running';
    return isUsual ? first : FIRST.length + at;
  };
  const columns = (): number[] => (isAll() ? onBench() : onBench().slice(0, FEW));
  const rows = (): ApartRow[] =>
    [...props.table.rows].sort(
      (a, b) => Number(props.own.includes(b.cause)) - Number(props.own.includes(a.cause)),
    );
  return (
    <>
      <div class="row wrap wc-readings">
        <h3>{word('workshopCar.suspects.readings')}</h3>
        <span class="sp" />
        <Show when={onBench().length > FEW}>
          <button type="button" class="btn sm" aria-pressed={isAll()} onClick={() => setAll(!isAll())}>
            {isAll()
              ? word('workshopCar.suspects.fewTests')
              : word('workshopCar.suspects.allTests', { count: plainNumber(onBench().length) })}
          </button>
        </Show>
      </div>
      <div class="wc-wide" role="region" aria-label={word('workshopCar.suspects.readings')} tabIndex={0}>
        <table class="wc-table">
          <thead>
            <tr>
              <th scope="col">{word('workshopCar.suspects.cause')}</th>
              <For each={columns()}>
                {(at) => <th scope="col">{props.names.testWithTime(props.table.tests[at].id)}</th>}
              </For>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row) => (
                <tr classList={{ own: props.own.includes(row.cause) }}>
                  <th scope="row">
                    {props.names.cause(row.cause)}
                    <Show when={row.severity > 0}>
                      <span class="mut nw"> {plainNumber(PERCENT * row.severity)} %</span>
                    </Show>
                  </th>
                  <For each={columns()}>
                    {(at) => (
                      <td>
                        {shownReading(props.table.tests[at], row.shows[at], props.units, props.names.look)}
                      </td>
                    )}
                  </For>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
    </>
  );
}
