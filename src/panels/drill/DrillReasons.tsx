/** After the answer: the verdict, the way that decides, and what guesses without tracing would have said. */
import { For, type JSX, onMount, Show } from 'solid-js';
import { answerOf } from '../../layout/drill/answerOf';
import { capLetter } from '../../layout/drill/capLetter';
import type { DrillBay } from '../../layout/drill/drill';
import { drillTrace } from '../../layout/drill/drillTrace';
import { cluesAt, lazyGuesses } from '../../layout/drill/lazyGuesses';
import { asItStands } from '../../units/asItStands';
import { word } from '../../words/words';
import { Icon } from '../Icon';
import { choiceName, letterOf, sideWord, stepName, thingName } from './drillWords';

export function DrillReasons(props: {
  readonly bay: DrillBay;
  readonly chosen: string;
  readonly onNext: () => void;
}): JSX.Element {
  let heading: HTMLHeadingElement | undefined;
  onMount(() => heading?.focus());
  const answer = () => answerOf(props.bay);
  const isRight = (): boolean => props.chosen === answer().right;
  const trace = () => drillTrace(props.bay, answer().port);
  const letter = (): string => letterOf(props.bay, answer().port);
  const verdict = (): string =>
    props.bay.question.kind === 'side'
      ? word('drill.verdict.side', { letter: letter(), side: sideWord(trace().side) })
      : word('drill.verdict.which', { letter: letter() });
  const rows = () => guessRows(props.bay);
  return (
    <>
      <div class="verd" classList={{ no: !isRight() }}>
        <span class="tk">
          <Icon name={isRight() ? 'tick' : 'cross'} size={26} />
        </span>
        <div>
          <h1 ref={heading} tabIndex={-1}>
            {isRight() ? word('drill.verdict.right') : word('drill.verdict.wrong')}
          </h1>
          <p>{verdict()}</p>
        </div>
      </div>
      <button type="button" class="btn pri full" onClick={() => props.onNext()}>
        {word('drill.why.next')}
      </button>
      <section aria-label={word('drill.why.title')}>
        <ul class="drs">
          <li>
            <Icon name="tick" size={18} />
            <span>
              <b>{trace().side === 'low' ? word('drill.why.low') : word('drill.why.high')}</b>{' '}
              {word('drill.why.way', {
                letter: letter(),
                steps: trace().downstream.map(stepName).join(' → '),
              })}
            </span>
          </li>
          <li>
            <Icon name="tick" size={18} />
            <span>{word('drill.why.thick', diametersOf(props.bay))}</span>
          </li>
          <For each={rows()}>
            {(row) => (
              <li>
                <Icon name="minus" size={18} />
                <span>
                  {row.text}{' '}
                  <Show when={row.isRight !== null}>
                    {row.isRight ? word('drill.why.luck') : word('drill.why.misled')}
                  </Show>
                </span>
              </li>
            )}
          </For>
        </ul>
      </section>
    </>
  );
}

function diametersOf({ layout }: DrillBay) {
  const of = (run: string): string => diameterWords(layout.lines.find(({ id }) => id.startsWith(`${run}-`)));
  return { suction: of('suction'), discharge: of('discharge'), liquid: of('liquid') };
}

const diameterWords = (line: { readonly diameterMm: number } | undefined): string =>
  line ? asItStands(line.diameterMm) : '';

interface GuessRow {
  readonly text: string;
  /** Null where nothing is claimed. */
  readonly isRight: boolean | null;
}

function guessRows(bay: DrillBay): GuessRow[] {
  const { right, port } = answerOf(bay);
  const guesses = lazyGuesses(bay);
  const clues = cluesAt(bay, port);
  const rows: GuessRow[] = [
    {
      text: word('drill.why.nearest', {
        part: word(`drill.part.${clues.nearest.part}`).toLowerCase(),
        guess: choiceName(bay, guesses.nearestPart),
      }),
      isRight: guesses.nearestPart === right,
    },
  ];
  if (clues.thickest) {
    rows.push({
      text: word('drill.why.thickest', {
        diameter: diameterWords(bay.layout.lines.find(({ id }) => id === clues.thickest?.line)),
        loop: clues.thickest.inLoop ? word('drill.why.inLoop') : word('drill.why.notInLoop'),
        guess: choiceName(bay, guesses.thickestPipe),
      }),
      isRight: guesses.thickestPipe === right,
    });
  }
  const letter = capLetter(bay, port);
  if (letter !== null) rows.push({ text: word('drill.why.cap', { letter }), isRight: null });
  const test = bay.ports.find(({ side }) => side === null);
  const on = test && bay.layout.ports.find(({ id }) => id === test.id)?.on;
  if (test && on && 'line' in on)
    rows.push({
      text: word('drill.why.other', { letter: test.letter, name: thingName(bay, on.line) }),
      isRight: null,
    });
  return rows;
}
