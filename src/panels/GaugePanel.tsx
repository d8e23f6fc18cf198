/** A gauge with what stands under it: side, the same pressure in the other unit, boiling temperature, where to look up. */
import { createMemo, type JSX, on, Show } from 'solid-js';
import { inWords, writePressure } from '../instruments/displayUnits';
import { GaugeFace, type Hub } from '../instruments/GaugeFace';
import { type Coupling, type GaugeReading, readGauge } from '../instruments/gaugeReading';
import type { FaceKind } from '../instruments/gaugeScale';
import { fullScalePa } from '../instruments/gaugeScale';
import { isNeedleSettling } from '../instruments/isSettling';
import { Ladder } from '../instruments/Ladder';
import { type WordId, word } from '../words/words';
import { calm } from './calm';
import { SideBadge } from './controls';
import { type ExpectedSpan, expectedSpan } from './expectedSpan';
import type { SessionModel } from './sessionModel';

export interface GaugeSource {
  readonly hub: Hub;
  readonly face: FaceKind;
  readonly channel: string;
  /** Hose whose coupler decides whether the car is behind the reading. */
  readonly hose: string;
}

/** Brackets move when they have moved by this much, Pa. */
const SPAN_STEP_PA = 2000;

function isSameSpan(before: ExpectedSpan | null, now: ExpectedSpan | null): boolean {
  if (before === null || now === null) return before === now;
  return (
    Math.abs(before.fromGaugePa - now.fromGaugePa) < SPAN_STEP_PA &&
    Math.abs(before.toGaugePa - now.toGaugePa) < SPAN_STEP_PA
  );
}

const sideWord = (hub: Hub): string => word(`instrument.side.${hub}` as WordId as 'instrument.side.low');

/** The needle has not come to rest: looked at once a second of the job. */
function isMoving(session: SessionModel, { channel, face }: GaugeSource): boolean {
  session.clock();
  const { seconds, values } = session.history(channel);
  return isNeedleSettling(face, seconds, values);
}

function ZeroButton(props: { readonly session: SessionModel; readonly source: GaugeSource }): JSX.Element {
  const isLoose = createMemo(
    () => props.session.view().hoses.find((one) => one.id === props.source.hose)?.port === null,
  );
  return (
    <Show when={isLoose()}>
      <button
        type="button"
        class="btn sm"
        onClick={() => props.session.send({ do: 'zero', gauge: props.source.hub })}
      >
        {word('panels.hose.zero')}
      </button>
    </Show>
  );
}

export function useReading(session: SessionModel, source: GaugeSource): () => GaugeReading {
  const hose = createMemo(() => session.view().hoses.find((one) => one.id === source.hose));
  const coupling = createMemo<Coupling>(() =>
    hose()?.port == null ? 'loose' : hose()?.couplerOpen === false ? 'shut' : 'open',
  );
  const pressurePa = createMemo(() => session.signal(source.channel));
  return createMemo(() =>
    readGauge(source.face, pressurePa(), session.units(), session.saturation(), coupling()),
  );
}

/** Nothing is said where a healthy car handled alike has been opened or emptied: no sheet holds for it either. */
function expectedWords(session: SessionModel, face: FaceKind, span: ExpectedSpan | null): string {
  const isEmptied =
    session.mode !== 'assessed' && Number.isNaN(session.signal('expected.lowSide.fromGaugePressurePa'));
  if (span === null) return isEmptied ? '' : word('instrument.expected');
  const written = (pa: number) => writePressure(pa, session.units().pressure, face);
  const [from, to] = [written(span.fromGaugePa), written(span.toGaugePa)];
  const { number, unit } = to;
  return word('instrument.healthy', {
    from: from.unit === unit ? from.number : inWords(from),
    to: `${number} ${unit}`,
  });
}

function MeterWords(props: {
  readonly session: SessionModel;
  readonly source: GaugeSource;
  readonly reading: GaugeReading;
  readonly span: ExpectedSpan | null;
}): JSX.Element {
  return (
    <>
      <span class="g-name">
        <SideBadge side={props.source.hub} /> {sideWord(props.source.hub)}
      </span>
      <span class="g-sub">
        <Show when={props.reading.other !== ''}>
          <span class="other nw">{props.reading.other} · </span>
        </Show>
        <span class="nw">{props.reading.short}</span>
      </span>
      <Show when={props.reading.state !== 'loose'}>
        <span class="g-exp">{expectedWords(props.session, props.source.face, props.span)}</span>
      </Show>
    </>
  );
}

/** A meter for speech round a drawn gauge; a gauge without a reading is a picture with a name. */
function Spoken(props: {
  readonly source: GaugeSource;
  readonly reading: GaugeReading;
  readonly children: JSX.Element;
}): JSX.Element {
  const spoken = calm(() => props.reading.spoken);
  const name = (): string => word('instrument.pressureOf', { side: sideWord(props.source.hub) });
  const off = (): boolean => props.reading.state === 'off';
  const kilopascals = (): number =>
    Math.round(Math.min(props.reading.gaugePressurePa, fullScalePa[props.source.face]) / 1000);
  return (
    <Show
      when={!off()}
      fallback={
        <div role="img" aria-label={`${name()}: ${spoken()}`}>
          {props.children}
        </div>
      }
    >
      <div
        role="meter"
        aria-label={name()}
        aria-valuemin={props.source.face === 'low' ? -100 : 0}
        aria-valuemax={fullScalePa[props.source.face] / 1000}
        aria-valuenow={kilopascals()}
        aria-valuetext={spoken()}
      >
        {props.children}
      </div>
    </Show>
  );
}

export function GaugePanel(props: {
  readonly session: SessionModel;
  readonly source: GaugeSource;
  readonly fluidKnown: boolean;
}): JSX.Element {
  const reading = useReading(props.session, props.source);
  const span = createMemo(() => expectedSpan(props.session, props.source), null, { equals: isSameSpan });
  const needlePa = createMemo(on(props.session.pulse, () => props.session.signal(props.source.channel)));
  return (
    <figure
      class={`gauge ${props.source.hub}`}
      classList={{ 'is-off': reading().state === 'off', 'is-loose': reading().state === 'loose' }}
    >
      <Spoken source={props.source} reading={reading()}>
        <GaugeFace
          face={props.source.face}
          hub={props.source.hub}
          reading={reading()}
          needlePa={needlePa()}
          units={props.session.units()}
          saturation={props.session.saturation()}
          fluidKnown={props.fluidKnown}
          expected={span()}
          isSettling={isMoving(props.session, props.source)}
        />
      </Spoken>
      <figcaption>
        <MeterWords session={props.session} source={props.source} reading={reading()} span={span()} />
        <ZeroButton session={props.session} source={props.source} />
      </figcaption>
    </figure>
  );
}

export function LadderPanel(props: {
  readonly session: SessionModel;
  readonly source: GaugeSource;
}): JSX.Element {
  const reading = useReading(props.session, props.source);
  const span = createMemo(() => expectedSpan(props.session, props.source), null, { equals: isSameSpan });
  return (
    <div class="lad" classList={{ 'is-off': reading().state === 'off' }}>
      <div class="row">
        <b class="s nw">
          <SideBadge side={props.source.hub} /> {sideWord(props.source.hub)}
        </b>
        <span class="sp" />
        <b class="rv">{reading().number}</b>
        <span class="s">{reading().unit}</span>
      </div>
      <Spoken source={props.source} reading={reading()}>
        <Ladder
          face={props.source.face}
          hub={props.source.hub}
          gaugePressurePa={reading().gaugePressurePa}
          unit={props.session.units().pressure}
          expected={span()}
        />
      </Spoken>
      <div class="lw">
        <span>{reading().meaning}</span>
        <Show when={reading().state !== 'off'}>
          <span>{expectedWords(props.session, props.source.face, span())}</span>
        </Show>
        <ZeroButton session={props.session} source={props.source} />
      </div>
    </div>
  );
}
