/** Proving: how thoroughly, how far it has come, a way to stop it, and the page that comes of it. */
import { createEffect, createSignal, type JSX, on, onCleanup, Show } from 'solid-js';
import type { ScenarioData } from '../../../shared/schema/scenario';
import { plainNumber, writeClock } from '../../instruments/displayUnits';
import type { ProofJob } from '../../prover/jobs';
import { word } from '../../words/words';
import { Choice } from '../car/Choice';
import type { CarLinks } from '../carLinks';
import { proofRequests, THOROUGHNESS, type Thoroughness } from './proofRequests';
import type { ProvedSoFar } from './provePool';
import type { Proving } from './proving';

const nameOf = (thoroughness: Thoroughness): string =>
  ({
    quick: word('workshopCar.proof.quick'),
    usual: word('workshopCar.proof.usual'),
    full: word('workshopCar.proof.full'),
  })[thoroughness];

/** Stays chosen when the screen is built anew. */
const [thoroughness, setThoroughness] = createSignal<Thoroughness>('usual');

export function ProofPanel(props: {
  readonly proving: Proving;
  /** Null while the text has errors. */
  readonly ready: ScenarioData | null;
  readonly links: CarLinks;
}): JSX.Element {
  let heading: HTMLHeadingElement | undefined;
  const prove = (): void => {
    if (props.ready) props.proving.start(props.ready, proofRequests[thoroughness()]);
  };
  const isOld = (): boolean => {
    const made = props.proving.proved();
    return made !== null && JSON.stringify(made.data) !== JSON.stringify(props.ready);
  };
  createEffect(on(props.proving.proved, (made) => made && heading?.focus(), { defer: true }));
  return (
    <section class="panel wc-panel" aria-labelledby="wc-proof">
      <div class="row wrap wc-screen">
        <h2 id="wc-proof" ref={heading} tabIndex={-1}>
          {word('workshopCar.proof.title')}
        </h2>
        <span class="sp" />
        <Choice
          label={word('workshopCar.proof.howWell')}
          options={THOROUGHNESS.map((value) => ({ value, label: nameOf(value) }))}
          value={thoroughness()}
          onChoose={setThoroughness}
        />
        <Show
          when={props.proving.soFar()}
          fallback={
            <button type="button" class="btn sm pri" disabled={props.ready === null} onClick={prove}>
              {word('workshopCar.proof.start')}
            </button>
          }
        >
          <button type="button" class="btn sm" onClick={() => props.proving.cancel()}>
            {word('workshopCar.proof.cancel')}
          </button>
        </Show>
      </div>
      <p class="s mut wc-screen">{word('workshopCar.proof.about')}</p>
      <Progress proving={props.proving} />
      <Show when={props.proving.failure()}>
        {(reason) => (
          <p class="s" role="alert">
            {word('workshopCar.failed', { reason: reason() })}
          </p>
        )}
      </Show>
      <Show when={props.proving.proved()}>
        {(made) => (
          <>
            <div class="row wrap wc-screen wc-made">
              <b role="status">
                {made().proof.verdict === 'holds'
                  ? word('workshopCar.proof.holds')
                  : word('workshopCar.proof.refused')}
              </b>
              <Show when={isOld()}>
                <span class="chip">{word('workshopCar.proof.old')}</span>
              </Show>
              <span class="sp" />
              <button type="button" class="btn sm" onClick={() => props.links.saveProof(made().proof)}>
                {word('workshopCar.proof.save')}
              </button>
              <button type="button" class="btn sm" onClick={() => window.print()}>
                {word('workshopCar.proof.print')}
              </button>
            </div>
            <div class="wc-sheet" role="region" aria-label={word('workshopCar.proof.page')} tabIndex={0}>
              <props.links.ProofSheet proof={made().proof} />
            </div>
          </>
        )}
      </Show>
    </section>
  );
}

const S_MS = 1000;
/** From here somebody wonders whether anything goes on [guess]. */
const LONG_S = 3;

function Progress(props: { readonly proving: Proving }): JSX.Element {
  /** Since something began or ended. */
  const [seconds, setSeconds] = createSignal(0);
  createEffect(
    on(props.proving.soFar, (soFar) => {
      setSeconds(0);
      if (soFar === null) return;
      const began = Date.now();
      const ticking = setInterval(() => setSeconds((Date.now() - began) / S_MS), S_MS);
      onCleanup(() => clearInterval(ticking));
    }),
  );
  return (
    <Show when={props.proving.soFar()}>
      {(soFar) => (
        <div class="wc-progress">
          <progress
            class="wc-bar"
            aria-label={word('workshopCar.proof.running')}
            value={soFar().done}
            max={Math.max(1, soFar().of)}
          />
          <p class="s mut">{soFarText(soFar())}</p>
          <Show when={soFar().now.length > 0}>
            <p class="s mut">{nowText(soFar().now, seconds())}</p>
          </Show>
        </div>
      )}
    </Show>
  );
}

function soFarText({ done, of, isMost }: ProvedSoFar): string {
  if (of === 0) return word('workshopCar.proof.beginning');
  const values = { done: plainNumber(done), of: plainNumber(of) };
  return isMost ? word('workshopCar.proof.soFarUpTo', values) : word('workshopCar.proof.soFar', values);
}

function nowText(now: readonly ProofJob[], seconds: number): string {
  const what = now.map(jobText).join('; ');
  return seconds < LONG_S
    ? word('workshopCar.proof.now', { what })
    : word('workshopCar.proof.nowFor', { what, time: writeClock(seconds) });
}

function jobText({ kind, seed }: ProofJob): string {
  const bay = { seed: String(seed) };
  switch (kind) {
    case 'apart':
      return word('workshopCar.proof.doing.apart');
    case 'know':
      return word('workshopCar.proof.doing.know', bay);
    case 'plan':
      return word('workshopCar.proof.doing.plan', bay);
    case 'lazy':
      return word('workshopCar.proof.doing.lazy', bay);
  }
}
