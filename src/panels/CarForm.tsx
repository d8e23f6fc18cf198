/** Engine, cabin controls and the bay door: what is set from the driver's seat and the room. */
import { type JSX } from 'solid-js';
import { word } from '../words/words';
import { Segmented } from './controls';
import { Form } from './Form';
import type { SessionModel } from './sessionModel';

const IDLE_RPM = 800;
const TEST_RPM = 1500;
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

export function CarRows(props: { readonly session: SessionModel }): JSX.Element {
  const signal = (id: string): number => props.session.signal(id);
  const rpm = (): number => {
    const now = Math.round(signal('engine.rpm') / 50) * 50;
    return now < 300 ? 0 : now < 1150 ? IDLE_RPM : TEST_RPM;
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
      <Row label={word('panels.car.engine')}>
        <Segmented
          label={word('panels.car.engine')}
          options={[
            { value: 0, label: word('panels.car.off') },
            { value: IDLE_RPM, label: word('panels.car.idle') },
            { value: TEST_RPM, label: word('panels.car.rpm1500') },
          ]}
          value={rpm()}
          onChoose={(value) => props.session.send({ do: 'engine', rpm: value })}
        />
      </Row>
      <Row label={word('panels.car.ac')}>
        <Segmented label={word('panels.car.ac')} options={onOff} value={signal('ac.on') === 1 ? 'on' : 'off'} onChoose={(to) => props.session.send({ do: 'ac', to })} />
      </Row>
      <Row label={word('panels.car.blower')}>
        <Segmented
          label={word('panels.car.blower')}
          options={BLOWER_STEPS.map((step) => ({ value: step, label: word('panels.car.blowerStep', { step: String(step) }) }))}
          value={signal('blower.speed')}
          onChoose={(speed) => props.session.send({ do: 'blower', speed })}
        />
      </Row>
      <Row label={word('panels.car.windows')}>
        <Segmented label={word('panels.car.windows')} options={openShut} value={signal('windows.open') === 1 ? 'open' : 'shut'} onChoose={(to) => props.session.send({ do: 'windows', to })} />
      </Row>
      <Row label={word('panels.car.air')}>
        <Segmented
          label={word('panels.car.air')}
          options={[
            { value: 'fresh', label: word('panels.car.fresh') },
            { value: 'recirculated', label: word('panels.car.recirculated') },
          ]}
          value={signal('air.recirculated') === 1 ? 'recirculated' : 'fresh'}
          onChoose={(to) => props.session.send({ do: 'air', to })}
        />
      </Row>
      <Row label={word('panels.car.door')}>
        <Segmented label={word('panels.car.door')} options={openShut} value={signal('door.open') === 1 ? 'open' : 'shut'} onChoose={(to) => props.session.send({ do: 'door', to })} />
      </Row>
    </div>
  );
}

export function CarForm(props: { readonly session: SessionModel; readonly onClose: () => void }): JSX.Element {
  return (
    <Form title={word('panels.car.title')} sub={word('panels.car.sub')} class="side" closeLabel={word('app.close')} onClose={props.onClose}>
      <CarRows session={props.session} />
    </Form>
  );
}
