/** The last ten minutes of every gauge of the bench, with what happened marked on them in shapes and words; or as a table. */
import { createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import { inWords, plainNumber, writeClock, writePressure } from '../instruments/displayUnits';
import { MarkShape } from '../instruments/StripLane';
import { spanTo } from '../instruments/stripLane';
import { word } from '../words/words';
import { Segmented, SideBadge } from './controls';
import { Form } from './Form';
import type { GaugeSource } from './GaugePanel';
import { gaugesOnBench } from './gaugesOnBench';
import { type HistoryMark, historyMarks } from './historyMarks';
import { LiveStrip } from './LiveStrip';
import type { SessionModel } from './sessionModel';

const MINUTES = 10;
const MINUTE_S = 60;

const nameOf = ({ hub }: GaugeSource): string =>
  ({
    low: word('instrument.side.low'),
    high: word('instrument.side.high'),
    charging: word('instrument.side.charging'),
  })[hub];

/** What a gauge read at a second, in the reader's unit; a dash where nothing was. */
function readAt(session: SessionModel, source: GaugeSource, second: number): string {
  const { seconds, values } = session.history(source.channel);
  const value = values[seconds.indexOf(Math.floor(second))];
  if (value === undefined || Number.isNaN(value)) return word('instrument.nothing');
  return inWords(writePressure(value, session.units().pressure, source.face));
}

function Marks(props: { readonly marks: readonly HistoryMark[] }): JSX.Element {
  const numbered = (): HistoryMark[] => props.marks.filter(({ number }) => number !== null);
  const clicks = (): number => props.marks.length - numbered().length;
  return (
    <ul class="lane-list">
      <Show when={numbered().length === 0 && clicks() === 0}>
        <li class="mut">{word('instrument.strip.nothing')}</li>
      </Show>
      <For each={numbered()}>
        {(mark) => (
          <li>
            <svg viewBox="-12 -12 24 24" width="24" height="24" aria-hidden="true">
              <MarkShape kind={mark.kind} number={mark.number} />
            </svg>
            <time>{writeClock(mark.second)}</time>
            <span>{mark.said}</span>
          </li>
        )}
      </For>
      <Show when={clicks() > 0}>
        <li>
          <svg viewBox="-12 -12 24 24" width="24" height="24" aria-hidden="true">
            <MarkShape kind="clutch" number={null} />
          </svg>
          <span>{word('instrument.strip.clicks', { count: plainNumber(clicks()) })}</span>
        </li>
      </Show>
    </ul>
  );
}

function HistoryTable(props: {
  readonly session: SessionModel;
  readonly sources: readonly GaugeSource[];
  readonly marks: readonly HistoryMark[];
  readonly span: { readonly from: number; readonly to: number };
  readonly second: number;
}): JSX.Element {
  const rows = (): { second: number; said: string }[] => {
    const first = Math.ceil(props.span.from / MINUTE_S);
    const last = Math.floor(props.second / MINUTE_S);
    const minutes = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * MINUTE_S);
    return [
      ...minutes.map((second) => ({ second, said: '' })),
      ...props.marks
        .filter(({ number }) => number !== null)
        .map((mark) => ({ second: mark.second, said: mark.said })),
    ].sort((one, other) => one.second - other.second);
  };
  return (
    <table class="lane-table">
      <caption class="vh">{word('instrument.strip.table')}</caption>
      <thead>
        <tr>
          <th scope="col">{word('instrument.strip.time')}</th>
          <For each={props.sources}>
            {(source) => (
              <th scope="col" class="n">
                {nameOf(source)}
              </th>
            )}
          </For>
          <th scope="col">{word('instrument.strip.what')}</th>
        </tr>
      </thead>
      <tbody>
        <For each={rows()}>
          {({ second, said }) => (
            <tr>
              <th scope="row">{writeClock(second)}</th>
              <For each={props.sources}>
                {(source) => <td class="n">{readAt(props.session, source, second)}</td>}
              </For>
              <td>{said}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}

export function HistoryForm(props: {
  readonly session: SessionModel;
  readonly onClose: () => void;
}): JSX.Element {
  const [shown, setShown] = createSignal<'chart' | 'table'>('chart');
  const second = createMemo(() => Math.floor(props.session.clock().seconds));
  const span = createMemo(() => spanTo(second(), MINUTES * MINUTE_S));
  const sources = createMemo(() => gaugesOnBench(props.session));
  const marks = createMemo(() => {
    second();
    return historyMarks(props.session.happened()).filter((mark) => mark.second >= span().from);
  });
  const unit = (): 'psi' | 'kPa' | 'bar' => props.session.units().pressure;
  return (
    <Form title={word('instrument.strip.title')} class="history" onClose={props.onClose}>
      <Segmented
        label={word('instrument.strip.view')}
        options={[
          { value: 'chart' as const, label: word('instrument.strip.chart') },
          { value: 'table' as const, label: word('instrument.strip.asTable') },
        ]}
        value={shown()}
        onChoose={setShown}
      />
      <Show
        when={shown() === 'chart'}
        fallback={
          <HistoryTable
            session={props.session}
            sources={sources()}
            marks={marks()}
            span={span()}
            second={second()}
          />
        }
      >
        <div class="lanes">
          <div class="stack">
            <For each={sources()}>
              {(source) => (
                <figure class="lane-fig">
                  <figcaption>
                    <SideBadge side={source.hub} /> <b>{nameOf(source)}</b>{' '}
                    <span class="mut">
                      {unit()} ·{' '}
                      {word('instrument.strip.now', { reading: readAt(props.session, source, second()) })}
                    </span>
                  </figcaption>
                  <LiveStrip session={props.session} channel={source.channel} side={source.hub} />
                </figure>
              )}
            </For>
          </div>
          <Marks marks={marks()} />
        </div>
      </Show>
    </Form>
  );
}
