/** Engine, cabin controls and the bay door: what is set from the driver's seat and the room. */
import { type JSX, Show } from 'solid-js';
import { plainNumber } from '../instruments/displayUnits';
import { word } from '../words/words';
import { Segmented, Stepped } from './controls';
import { Form } from './Form';
import type { SessionModel } from './sessionModel';

const IDLE_RPM = 800;
const TEST_RPM = 1500;
const LEAST_RPM = 600;
const MOST_RPM = 3000;
const RPM_STEP = 50;
/** A speed that has no button of its own. */
const OTHER = 1;
const BLOWER_STEPS = [0, 1, 2, 3, 4];

function Row(props: { readonly label: string; readonly children: JSX.Element }): JSX.Element {
  return (
    <div class="setr">
      <div>
        <b>{props.label}</b>
      </div>
      <div>{props.children}</div>
    </div>
  );
}

/** Pit and heater, where the place has them. */
function RoomRows(props: { readonly session: SessionModel }): JSX.Element {
  const signal = (id: string): number => props.session.signal(id);
  return (
    <>
      <Show when={props.session.facts.site.kind === 'garage-with-pit'}>
        <Row label={word('task.car.pit')}>
          <Segmented
            deed
            label={word('task.car.pit')}
            options={[
              { value: 'out', label: word('task.car.onFloor') },
              { value: 'in', label: word('task.car.inPit') },
            ]}
            value={signal('pit.in') === 1 ? 'in' : 'out'}
            onChoose={(to) => props.session.send({ do: 'pit', to })}
          />
        </Row>
      </Show>
      <Show when={props.session.facts.hasHeater}>
        <Row label={word('task.car.heater')}>
          <Segmented
            deed
            label={word('task.car.heater')}
            options={[
              { value: 'on', label: word('panels.car.on') },
              { value: 'off', label: word('panels.car.off') },
            ]}
            value={signal('heater.on') === 1 ? 'on' : 'off'}
            onChoose={(to) => props.session.send({ do: 'heater', to })}
          />
        </Row>
      </Show>
    </>
  );
}

/** What an engine turns at; a car that has none stands ready. */
function EngineRow(props: { readonly session: SessionModel }): JSX.Element {
  const turning = (): number => {
    const now = props.session.signal('engine.rpm');
    return Number.isNaN(now) ? 0 : Math.round(now / RPM_STEP) * RPM_STEP;
  };
  const rpm = (): number => {
    const now = turning();
    return now === 0 || now === IDLE_RPM || now === TEST_RPM ? now : OTHER;
  };
  return (
    <Row label={word('panels.car.engine')}>
      <Segmented
        deed
        label={word('panels.car.engine')}
        options={[
          { value: 0, label: word('panels.car.off') },
          { value: IDLE_RPM, label: word('panels.car.idle') },
          { value: TEST_RPM, label: word('panels.car.rpm1500') },
        ]}
        value={rpm()}
        onChoose={(value) => props.session.send({ do: 'engine', rpm: value })}
      />
      <Show when={rpm() > 0}>
        <Stepped
          label={word('panels.car.speed')}
          less={word('panels.car.slower')}
          more={word('panels.car.faster')}
          min={LEAST_RPM}
          max={MOST_RPM}
          step={RPM_STEP}
          value={Math.max(LEAST_RPM, turning())}
          text={word('panels.car.rpm', { rpm: plainNumber(turning()) })}
          onSet={(value) => props.session.send({ do: 'engine', rpm: value })}
        />
      </Show>
    </Row>
  );
}

export function CarRows(props: { readonly session: SessionModel }): JSX.Element {
  const signal = (id: string): number => props.session.signal(id);
  const temperature = () => {
    if (signal('temperature.coldest') === 1) return 'coldest';
    return signal('temperature.warmest') === 1 ? 'warmest' : 'middle';
  };
  const onOff = [
    { value: 'on', label: word('panels.car.on') },
    { value: 'off', label: word('panels.car.off') },
  ];
  const openShut = [
    { value: 'open', label: word('panels.car.open') },
    { value: 'shut', label: word('panels.car.shut') },
  ];
  return (
    <div>
      <Show when={signal('car.ready') !== 1}>
        <EngineRow session={props.session} />
      </Show>
      <Row label={word('panels.car.ac')}>
        <Segmented
          deed
          label={word('panels.car.ac')}
          options={onOff}
          value={signal('ac.on') === 1 ? 'on' : 'off'}
          onChoose={(to) => props.session.send({ do: 'ac', to })}
        />
      </Row>
      <Row label={word('panels.car.blower')}>
        <Segmented
          deed
          label={word('panels.car.blower')}
          options={BLOWER_STEPS.map((step) => ({
            value: step,
            label: word('panels.car.blowerStep', { step: String(step) }),
          }))}
          value={signal('blower.speed')}
          onChoose={(speed) => props.session.send({ do: 'blower', speed })}
        />
      </Row>
      <Row label={word('task.car.temperature')}>
        <Segmented
          deed
          label={word('task.car.temperature')}
          options={[
            { value: 'coldest' as const, label: word('task.car.coldest') },
            { value: 'middle' as const, label: word('task.car.middle') },
            { value: 'warmest' as const, label: word('task.car.warmest') },
          ]}
          value={temperature()}
          onChoose={(to) => props.session.send({ do: 'temperature', to })}
        />
      </Row>
      <Row label={word('panels.car.windows')}>
        <Segmented
          deed
          label={word('panels.car.windows')}
          options={openShut}
          value={signal('windows.open') === 1 ? 'open' : 'shut'}
          onChoose={(to) => props.session.send({ do: 'windows', to })}
        />
      </Row>
      <Row label={word('panels.car.air')}>
        <Segmented
          deed
          label={word('panels.car.air')}
          options={[
            { value: 'fresh', label: word('panels.car.fresh') },
            { value: 'recirculated', label: word('panels.car.recirculated') },
          ]}
          value={signal('air.recirculated') === 1 ? 'recirculated' : 'fresh'}
          onChoose={(to) => props.session.send({ do: 'air', to })}
        />
      </Row>
      <Row label={word('panels.car.hood')}>
        <Segmented
          deed
          label={word('panels.car.hood')}
          options={openShut}
          value={signal('hood.open') === 0 ? 'shut' : 'open'}
          onChoose={(to) => props.session.send({ do: 'hood', to })}
        />
      </Row>
      <Row label={word('panels.car.door')}>
        <Segmented
          deed
          label={word('panels.car.door')}
          options={openShut}
          value={signal('door.open') === 1 ? 'open' : 'shut'}
          onChoose={(to) => props.session.send({ do: 'door', to })}
        />
      </Row>
      <Row label={word('task.car.chock')}>
        <Segmented
          deed
          label={word('task.car.chock')}
          options={[
            { value: 'on', label: word('task.car.inPlace') },
            { value: 'off', label: word('task.car.away') },
          ]}
          value={signal('chock.on') === 1 ? 'on' : 'off'}
          onChoose={(to) => props.session.send({ do: 'chock', to })}
        />
      </Row>
      <RoomRows session={props.session} />
    </div>
  );
}

export function CarForm(props: {
  readonly session: SessionModel;
  readonly onClose: () => void;
}): JSX.Element {
  return (
    <Form
      title={word('panels.car.title')}
      sub={word('panels.car.sub')}
      class="side"
      closeLabel={word('app.close')}
      onClose={props.onClose}
    >
      <CarRows session={props.session} />
    </Form>
  );
}
