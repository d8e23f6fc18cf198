/** Both gauges of the running car at a moment, each with what stands under it; the brackets are a sound car's. */
import { For, type JSX } from 'solid-js';
import { type DisplayUnits, inWords, writePressure } from '../../instruments/displayUnits';
import { GaugeFace } from '../../instruments/GaugeFace';
import { readGauge } from '../../instruments/gaugeReading';
import { expectedWindow } from '../../suspects/expectedWindow';
import { word } from '../../words/words';
import type { CarTrace } from './carRun';

const SIDES = ['low', 'high'] as const;

export function CarGauges(props: {
  readonly own: CarTrace;
  readonly sound: CarTrace;
  readonly second: number;
  readonly units: DisplayUnits;
}): JSX.Element {
  const expected = () => {
    const { lowPa, highPa, ventK } = props.sound;
    return expectedWindow(lowPa[props.second], highPa[props.second], ventK[props.second]);
  };
  return (
    <div class="wc-gauges">
      <For each={SIDES}>
        {(side) => {
          const name = side === 'low' ? word('workshopCar.gauge.low') : word('workshopCar.gauge.high');
          const trace = (): Float64Array => (side === 'low' ? props.own.lowPa : props.own.highPa);
          const reading = () => readGauge(side, trace()[props.second], props.units, null);
          const written = (pa: number): string => inWords(writePressure(pa, props.units.pressure, side));
          const ends = () => ({
            from: written(expected()[side].fromGaugePa),
            to: written(expected()[side].toGaugePa),
          });
          const said = (): string =>
            word('workshopCar.gauge.said', {
              side: name,
              value: `${reading().number} ${reading().unit}`,
              ...ends(),
            });
          return (
            <figure class="wc-gauge">
              <div role="img" aria-label={said()}>
                <GaugeFace
                  face={side}
                  hub={side}
                  reading={reading()}
                  units={props.units}
                  saturation={null}
                  fluidKnown={false}
                  expected={expected()[side]}
                />
              </div>
              <figcaption>
                <i class={`bdg ${side}`} aria-hidden="true">
                  {side === 'low' ? 'L' : 'H'}
                </i>{' '}
                <b>{name}</b> <span class="s mut nw">{word('workshopCar.gauge.healthy', ends())}</span>
              </figcaption>
            </figure>
          );
        }}
      </For>
    </div>
  );
}
