/** Service tools in words: what hose they are on, run or not, valves, regulator, oil, gas samples. A press is one command. */
import { createSignal, For, type JSX, Match, Show, Switch } from 'solid-js';
import { inWords, plainNumber, writePressure } from '../instruments/displayUnits';
import { word } from '../words/words';
import { Segmented, Stepped } from './controls';
import { ConversionRows } from './conversionRows';
import { CHANNELS, channelReading } from './FindingForm';
import { BridgeRows } from './hazardRows';
import { SealerRows } from './PortTasks';
import { hoseName, portName } from './portWords';
import type { SessionModel } from './sessionModel';
import { valveStands } from './valveStands';

const VALVE_END = 16;
const MOST_KPA = 1600;
const KPA_STEP = 50;
const PA_PER_KPA = 1000;
const ML_PER_M3 = 1e6;
const OIL_ML = { least: 5, most: 120, step: 5 } as const;

interface Rows {
  readonly session: SessionModel;
}

/** What each tool shows, by the channels of its own. */
const SHOWS: Readonly<Record<string, readonly string[]>> = {
  'recovery-machine': ['recovery-scale', 'drained-oil'],
  'micron-gauge': ['micron-gauge'],
  'charging-tank': ['charging-scale'],
  identifier: ['gas-r134a', 'gas-r12', 'gas-r1234yf', 'gas-hydrocarbon', 'gas-air'],
};

function Shown(props: Rows & { readonly tool: string }): JSX.Element {
  const lines = () =>
    CHANNELS.filter(({ id }) => SHOWS[props.tool]?.includes(id)).flatMap((channel) => {
      const line = channelReading(props.session, channel);
      return line === null ? [] : [line];
    });
  return (
    <Show when={lines().length > 0}>
      <ul class="shows">
        <For each={lines()}>{(line) => <li>{line}</li>}</For>
      </ul>
    </Show>
  );
}

/** On to a hose or off it. Most screw on to the end of a hose; a vacuum gauge goes beside what is there. */
function Mounting(props: Rows & { readonly tool: string }): JSX.Element {
  const { session } = props;
  const onto = () => session.view().devices.find(({ id }) => id === props.tool)?.onto ?? null;
  const places = () => session.choices(props.tool === 'micron-gauge' ? 'device-place' : 'can-inlet');
  return (
    <Show
      when={onto()}
      fallback={
        <div class="stack">
          <span class="s">{word('panels.can.onto')}</span>
          <div class="row wrap">
            <For each={places()}>
              {(hose) => (
                <button
                  type="button"
                  class="btn sm"
                  onClick={() => session.send({ do: 'attach', device: props.tool, onto: hose })}
                >
                  {hoseName(hose)}
                </button>
              )}
            </For>
          </div>
        </div>
      }
    >
      {(hose) => (
        <div class="row wrap">
          <span class="s">{word('panels.service.on', { hose: hoseName(hose()) })}</span>
          <span class="sp" />
          <button
            type="button"
            class="btn sm"
            onClick={() => session.send({ do: 'detach', device: props.tool })}
          >
            {word('panels.can.untap')}
          </button>
        </div>
      )}
    </Show>
  );
}

function Running(props: Rows & { readonly tool: string; readonly bottle?: true }): JSX.Element {
  const isOn = (): boolean => props.session.signal(`device.${props.tool}.running`) === 1;
  return (
    <Segmented
      deed
      label={props.bottle ? word('task.bottle.valve') : word('panels.service.motor')}
      options={[
        { value: 'on' as const, label: props.bottle ? word('panels.car.open') : word('panels.service.runs') },
        {
          value: 'off' as const,
          label: props.bottle ? word('panels.car.shut') : word('panels.service.stands'),
        },
      ]}
      value={isOn() ? 'on' : 'off'}
      onChoose={(to) => props.session.send({ do: 'run', device: props.tool, to })}
    />
  );
}

function ChargingTank(props: Rows): JSX.Element {
  const turn = (): number => props.session.signal('chargingTank.valveSixteenths');
  const way = () => (props.session.signal('chargingTank.inverted') === 1 ? 'inverted' : 'upright');
  const label = word('panels.service.tankValve');
  return (
    <>
      <span class="s">{label}</span>
      <Stepped
        label={label}
        less={word('panels.can.valveLess')}
        more={word('panels.can.valveMore')}
        min={0}
        max={VALVE_END}
        step={1}
        value={turn()}
        text={valveStands(turn())}
        onSet={(value) => props.session.send({ do: 'tank-valve', tank: 'charging-tank', turn: value })}
      />
      <span class="s">{word('panels.service.stand')}</span>
      <Segmented
        deed
        label={word('panels.service.stand')}
        options={[
          { value: 'upright' as const, label: word('panels.service.upright') },
          { value: 'inverted' as const, label: word('panels.service.inverted') },
        ]}
        value={way()}
        onChoose={(value) => props.session.send({ do: 'stand-tank', tank: 'charging-tank', way: value })}
      />
    </>
  );
}

function Regulator(props: Rows): JSX.Element {
  const setPa = (): number => props.session.signal('regulator.gaugePressurePa');
  return (
    <>
      <span class="s">{word('panels.service.regulator')}</span>
      <Stepped
        label={word('panels.service.regulator')}
        less={word('panels.service.regulatorLess')}
        more={word('panels.service.regulatorMore')}
        min={0}
        max={MOST_KPA}
        step={KPA_STEP}
        value={setPa() / PA_PER_KPA}
        text={inWords(writePressure(setPa(), props.session.units().pressure, 'high'))}
        onSet={(kPa) => props.session.send({ do: 'regulator', kPa })}
      />
    </>
  );
}

function Oil(props: Rows): JSX.Element {
  const [mL, setML] = createSignal<number>(OIL_ML.least);
  const left = (): string => plainNumber(props.session.signal('oilInjector.leftM3') * ML_PER_M3);
  return (
    <>
      <p class="s mut">{word('panels.service.oilLeft', { mL: left() })}</p>
      <Stepped
        label={word('panels.service.oil')}
        less={word('panels.service.less')}
        more={word('panels.service.more')}
        min={OIL_ML.least}
        max={OIL_ML.most}
        step={OIL_ML.step}
        value={mL()}
        text={word('panels.service.millilitres', { mL: plainNumber(mL()) })}
        onSet={setML}
      />
      <button type="button" class="btn" onClick={() => props.session.send({ do: 'inject-oil', mL: mL() })}>
        {word('panels.service.inject', { mL: plainNumber(mL()) })}
      </button>
    </>
  );
}

function Sample(props: Rows): JSX.Element {
  const sampling = (): boolean => props.session.signal('identifier.sampling') === 1;
  return (
    <>
      <div class="stack">
        <For each={props.session.view().ports}>
          {(port) => (
            <button
              type="button"
              class="btn sm"
              onClick={() => props.session.send({ do: 'identify', port: port.id })}
            >
              {word('panels.service.sampleAt', { port: portName(props.session, port.id) })}
            </button>
          )}
        </For>
      </div>
      <Show when={sampling()}>
        <p class="slim-note">{word('twin.device.sampling')}</p>
      </Show>
    </>
  );
}

const STOPPED_BY_ITSELF: readonly string[] = ['recovery-ended', 'tank-filled'];

/** Why it is off, where nobody switched it off. */
function ByItself(props: Rows): JSX.Element {
  const last = () =>
    props.session
      .view()
      .happened.find(
        ({ id, subject }) =>
          STOPPED_BY_ITSELF.includes(id) || (id === 'device-started' && subject === 'recovery-machine'),
      )?.id;
  return (
    <Switch>
      <Match when={last() === 'recovery-ended'}>
        <p class="slim-note">{word('happening.recovery-ended')}</p>
      </Match>
      <Match when={last() === 'tank-filled'}>
        <p class="slim-note">{word('happening.tank-filled')}</p>
      </Match>
    </Switch>
  );
}

function TankFill(props: Rows): JSX.Element {
  const eighths = (): string => plainNumber(8 * props.session.signal('recoveryTank.fillRatio'));
  return <p class="s mut">{word('twin.device.fill', { eighths: eighths() })}</p>;
}

/** Gas with nothing but its own valve before the hose. */
const BOTTLES: readonly string[] = ['shop-air', 'oxygen', 'bare-nitrogen'];
const ON_HOSE: readonly string[] = [
  'recovery-machine',
  'vacuum-pump',
  'micron-gauge',
  'charging-tank',
  'nitrogen',
  'oil-injector',
  ...BOTTLES,
];

export function ServiceRows(props: Rows & { readonly tool: string }): JSX.Element {
  const { session } = props;
  return (
    <div class="stack">
      <Shown session={session} tool={props.tool} />
      <Show when={ON_HOSE.includes(props.tool)}>
        <Mounting session={session} tool={props.tool} />
      </Show>
      <Switch>
        <Match when={props.tool === 'recovery-machine'}>
          <Running session={session} tool={props.tool} />
          <ByItself session={session} />
          <TankFill session={session} />
          <BridgeRows session={session} of={['tank-limit']} />
        </Match>
        <Match when={props.tool === 'vacuum-pump'}>
          <Running session={session} tool={props.tool} />
        </Match>
        <Match when={props.tool === 'charging-tank'}>
          <ChargingTank session={session} />
        </Match>
        <Match when={props.tool === 'nitrogen'}>
          <Regulator session={session} />
        </Match>
        <Match when={BOTTLES.includes(props.tool)}>
          <Running session={session} tool={props.tool} bottle />
        </Match>
        <Match when={props.tool === 'conversion-kit'}>
          <ConversionRows session={session} />
        </Match>
        <Match when={props.tool === 'sealer-test'}>
          <SealerRows session={session} />
        </Match>
        <Match when={props.tool === 'oil-injector'}>
          <Oil session={session} />
        </Match>
        <Match when={props.tool === 'identifier'}>
          <Sample session={session} />
        </Match>
      </Switch>
    </div>
  );
}
