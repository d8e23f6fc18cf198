/** See-inside: loop, diagram and table of the same four points, and one sentence worked out from them. */
import { createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import {
  ATMOSPHERE_PA,
  type DisplayUnits,
  inWords,
  plainNumber,
  writePressure,
  writeTemperature,
} from '../instruments/displayUnits';
import { LoopDrawing } from '../instruments/LoopDrawing';
import { PressureEnthalpy } from '../instruments/PressureEnthalpy';
import { isKnown, type StatePoint } from '../instruments/phGeometry';
import type { SaturationLine } from '../instruments/saturation';
import { word } from '../words/words';
import { Segmented } from './controls';
import { Icon } from './Icon';
import { insideSentences, phaseWords } from './insideWords';
import type { SessionModel } from './sessionModel';
import { TopBar } from './TopBar';

export const POINT_NUMBERS = [1, 2, 3, 4] as const;

export function pointsOf(session: SessionModel): StatePoint[] {
  return POINT_NUMBERS.map((point) => ({
    pressurePa: session.signal(`point${point}.pressurePa`),
    enthalpyJPerKg: session.signal(`point${point}.enthalpyJPerKg`),
    temperatureK: session.signal(`point${point}.temperatureK`),
  }));
}

/** Of a healthy car handled alike; unknown in an assessed session. */
function healthyPointsOf(session: SessionModel): StatePoint[] {
  return POINT_NUMBERS.map((point) => ({
    pressurePa: session.signal(`expected.point${point}.pressurePa`),
    enthalpyJPerKg: session.signal(`expected.point${point}.enthalpyJPerKg`),
    temperatureK: Number.NaN,
  }));
}

/** Which outline is which car. */
function CycleKey(): JSX.Element {
  return (
    <ul class="key">
      <li>
        <svg width="34" height="14" aria-hidden="true">
          <path d="M2 7H32" class="cycle" />
        </svg>
        {word('inside.thisCar')}
      </li>
      <li>
        <svg width="34" height="14" aria-hidden="true">
          <path d="M2 7H32" class="cycle-healthy" />
        </svg>
        {word('inside.healthyCar')}
      </li>
    </ul>
  );
}

const pointWord = (number: number): string =>
  [word('inside.point.p1'), word('inside.point.p2'), word('inside.point.p3'), word('inside.point.p4')][
    number - 1
  ];

export function Key(): JSX.Element {
  const rows: readonly (readonly [string, string])[] = [
    ['t-liq', word('inside.liquid')],
    ['t-two', word('inside.mixture')],
    ['t-vap', word('inside.vapour')],
  ];
  return (
    <ul class="key">
      <For each={rows}>
        {([texture, name]) => (
          <li>
            <svg width="40" height="20" aria-hidden="true">
              <rect width="38" height="18" x="1" y="1" rx="9" fill={`url(#${texture})`} class="swatch" />
            </svg>
            {name}
          </li>
        )}
      </For>
    </ul>
  );
}

export function PointTable(props: {
  readonly points: readonly StatePoint[];
  readonly units: DisplayUnits;
  readonly saturation: SaturationLine;
}): JSX.Element {
  return (
    <table class="st4">
      <caption class="vh">{word('inside.table.caption')}</caption>
      <thead>
        <tr>
          <th scope="col">{word('inside.table.point')}</th>
          <th scope="col" class="n">
            {word('inside.table.pressure')}
          </th>
          <th scope="col" class="n">
            {word('inside.table.temperature')}
          </th>
          <th scope="col" class="n">
            {word('inside.table.enthalpy')}
          </th>
          <th scope="col">{word('inside.table.phase')}</th>
        </tr>
      </thead>
      <tbody>
        <For each={POINT_NUMBERS}>
          {(number) => {
            const point = (): StatePoint => props.points[number - 1];
            const low = number === 1 || number === 4;
            return (
              <tr>
                <td>
                  <i class={`bdg ${low ? 'low' : 'high'}`} aria-hidden="true">
                    {number}
                  </i>{' '}
                  {pointWord(number)}
                </td>
                <td class="n">
                  {isKnown(point())
                    ? inWords(
                        writePressure(
                          point().pressurePa - ATMOSPHERE_PA,
                          props.units.pressure,
                          low ? 'low' : 'high',
                        ),
                      )
                    : word('instrument.nothing')}
                </td>
                <td class="n">
                  {isKnown(point())
                    ? inWords(writeTemperature(point().temperatureK, props.units.temperature))
                    : word('instrument.nothing')}
                </td>
                <td class="n" data-enthalpy={number}>
                  {isKnown(point())
                    ? word('inside.enthalpyValue', { number: plainNumber(point().enthalpyJPerKg / 1000, 1) })
                    : word('instrument.nothing')}
                </td>
                <td>{isKnown(point()) ? phaseWords(props.saturation, point()) : ''}</td>
              </tr>
            );
          }}
        </For>
      </tbody>
    </table>
  );
}

type Shown = 'both' | 'loop' | 'diagram' | 'table';

export interface InsideProps {
  readonly session: SessionModel;
  readonly onBay: () => void;
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
  readonly clock: JSX.Element;
}

export function Inside(props: InsideProps): JSX.Element {
  const [shown, setShown] = createSignal<Shown>('both');
  const points = createMemo(() => pointsOf(props.session));
  const healthy = createMemo(() => healthyPointsOf(props.session));
  const units = (): DisplayUnits => props.session.units();
  const side = (id: 'lowSide' | 'highSide', face: 'low' | 'high'): string =>
    inWords(writePressure(props.session.signal(`${id}.gaugePressurePa`), units().pressure, face));
  const metering = (): 'orifice' | 'valve' =>
    props.session.layout.parts.some((part) => part.kind === 'orifice') ? 'orifice' : 'valve';
  return (
    <div>
      <TopBar
        title={word('inside.title', { name: props.session.facts.title })}
        onHome={props.onHome}
        onMenu={props.onMenu}
        onHelp={props.onHelp}
      >
        <span class="sp" />
        {props.clock}
        <span class="hide-s hide-m">
          <Segmented
            label={word('inside.view')}
            options={[
              { value: 'both' as Shown, label: word('inside.both') },
              { value: 'loop' as Shown, label: word('inside.loopOnly') },
              { value: 'diagram' as Shown, label: word('inside.diagramOnly') },
              { value: 'table' as Shown, label: word('inside.tableOnly') },
            ]}
            value={shown()}
            onChoose={setShown}
          />
        </span>
        <button type="button" class="btn sm" aria-label={word('inside.bay')} onClick={() => props.onBay()}>
          <Icon name="back" size={18} />
          <span class="hide-s">{word('inside.bay')}</span>
        </button>
      </TopBar>
      <Show when={props.session.saturation()}>
        {(saturation) => (
          <main class={`inside show-${shown()}`} id="main">
            <h1 class="vh">{word('inside.title', { name: props.session.facts.title })}</h1>
            <section class="panel lp" aria-label={word('inside.loop')} data-region tabIndex={-1}>
              <div class="row wrap">
                <h2>{word('inside.loop')}</h2>
                <span class="sp" />
                <Key />
              </div>
              <LoopDrawing
                saturation={saturation()}
                points={points()}
                metering={metering()}
                low={side('lowSide', 'low')}
                high={side('highSide', 'high')}
              />
            </section>
            <section class="panel dg" aria-label={word('inside.diagram')} data-region tabIndex={-1}>
              <div class="row wrap">
                <h2>{word('inside.diagram')}</h2>
                <span class="mut s">{saturation().fluid}</span>
                <span class="sp" />
                <Show when={healthy().every(isKnown)}>
                  <CycleKey />
                </Show>
              </div>
              <PressureEnthalpy
                saturation={saturation()}
                points={points()}
                units={units()}
                healthy={healthy()}
              />
            </section>
            <section class="panel tb" aria-label={word('inside.tableOnly')} data-region tabIndex={0}>
              <PointTable points={points()} units={units()} saturation={saturation()} />
              <p class="say2">
                <b>{word('inside.says.title')}</b>{' '}
                {insideSentences(props.session, saturation(), points()).join(' ')}
              </p>
            </section>
          </main>
        )}
      </Show>
    </div>
  );
}
