/** The instruments: gauges of whatever hose is on the bench, thermometers and scale as plates, the live strip chart. */
import { createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import { type Written, writeMass, writeTemperature } from '../instruments/displayUnits';
import { isProbeSettling } from '../instruments/isSettling';
import { word } from '../words/words';
import { Segmented } from './controls';
import { GaugePanel, LadderPanel } from './GaugePanel';
import { GAUGE_SOURCES, gaugesOnBench } from './gaugesOnBench';
import { Icon } from './Icon';
import { LiveStrip } from './LiveStrip';
import { Meter } from './Meter';
import type { SessionModel } from './sessionModel';
import { ToolMeters } from './ToolMeters';

type GaugeGroup = 'set' | 'charging';

/** Which gauges to show: what was chosen, or else whatever is coupled, or else what there is. */
function useGroup(session: SessionModel) {
  const [chosen, setChosen] = createSignal<GaugeGroup | null>(null);
  const has = (id: string): boolean => session.view().hoses.some((hose) => hose.id === id);
  const groups = createMemo<GaugeGroup[]>(() => [
    ...(has('gauge-low') ? (['set'] as const) : []),
    ...(has('charging') ? (['charging'] as const) : []),
  ]);
  const coupled = (ids: readonly string[]): boolean =>
    session.view().hoses.some((hose) => ids.includes(hose.id) && hose.port !== null);
  const group = createMemo<GaugeGroup>(() => {
    const wanted = chosen();
    if (wanted && groups().includes(wanted)) return wanted;
    if (groups().includes('charging') && coupled(['charging']) && !coupled(['gauge-low', 'gauge-high']))
      return 'charging';
    return groups()[0] ?? 'set';
  });
  return { group, groups, setChosen };
}

/** Whether this bench has an instrument: its channel exists only then. */
export function Meters(props: { readonly session: SessionModel }): JSX.Element {
  const session = (): SessionModel => props.session;
  const temperature = (channel: string): Written | null => {
    const value = session().signal(channel);
    return Number.isNaN(value) ? null : writeTemperature(value, session().units().temperature, 1);
  };
  const mass = (): Written | null => {
    const value = session().signal('scale.massKg');
    return Number.isNaN(value) ? null : writeMass(value, session().units().mass);
  };
  const placeOf = (instrument: string): string => {
    const place = session().probeAt(instrument);
    if (place === null) return word('work.meter.notPlaced');
    session().clock();
    const { seconds, values } = session().history(`${instrument}Thermometer.temperatureK`);
    return isProbeSettling(seconds, values) ? word('instrument.settlingAt', { place }) : place;
  };
  return (
    <div class="pair">
      <Meter
        icon="therm"
        name={word('work.meter.air')}
        reading={temperature('airThermometer.temperatureK')}
        note={placeOf('air')}
      />
      <Meter
        icon="clamp"
        name={word('work.meter.line')}
        reading={temperature('lineThermometer.temperatureK')}
        note={placeOf('line')}
      />
      <Meter
        icon="scale"
        name={word('work.meter.scale')}
        reading={mass()}
        note={mass() === null ? word('work.meter.notPlaced') : word('work.meter.onScale')}
      />
    </div>
  );
}

/** Every gauge of the bench in its straight form. */
export function GaugeLadders(props: { readonly session: SessionModel }): JSX.Element {
  const shown = createMemo(() => gaugesOnBench(props.session));
  return (
    <div class="stack">
      <For each={shown()}>{(source) => <LadderPanel session={props.session} source={source} />}</For>
    </div>
  );
}

export function Instruments(props: {
  readonly session: SessionModel;
  readonly onHistory: () => void;
}): JSX.Element {
  const { group, groups, setChosen } = useGroup(props.session);
  const fluidKnown = (): boolean => props.session.view().sheetsRead.length > 0;
  return (
    <section class="inst" aria-label={word('work.region.instruments')} data-region tabIndex={-1}>
      <div class="ihead">
        <Show when={groups().length > 1}>
          <Segmented
            label={word('work.gaugeChoice')}
            options={[
              { value: 'set' as const, label: word('work.gaugeSet') },
              { value: 'charging' as const, label: word('instrument.side.charging') },
            ]}
            value={group()}
            onChoose={setChosen}
          />
        </Show>
        <button
          type="button"
          class="btn sm"
          aria-label={word('instrument.strip.title')}
          onClick={() => props.onHistory()}
        >
          <Icon name="chart" size={18} />
          <Show when={groups().length < 2}>
            <span>{word('instrument.strip.title')}</span>
          </Show>
        </button>
      </div>
      <div class="dials">
        <For each={GAUGE_SOURCES[group()]}>
          {(source) => <GaugePanel session={props.session} source={source} fluidKnown={fluidKnown()} />}
        </For>
      </div>
      <div class="lads">
        <For each={GAUGE_SOURCES[group()]}>
          {(source) => <LadderPanel session={props.session} source={source} />}
        </For>
      </div>
      <Show when={group() === 'charging'}>
        <div class="strip">
          <LiveStrip session={props.session} channel="chargingGauge.gaugePressurePa" side="charging" />
        </div>
      </Show>
      <div class="plates">
        <ToolMeters session={props.session} />
        <Meters session={props.session} />
      </div>
    </section>
  );
}
