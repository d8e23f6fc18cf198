/** Read-outs of service tools that are in use: vacuum gauge, the tanks' scales, what the identifier found, what ticked. */
import { createMemo, For, type JSX, Show } from 'solid-js';
import { inWords, plainNumber, type Written, writeVacuum } from '../instruments/displayUnits';
import { word } from '../words/words';
import { benchToolName } from './benchTools';
import { writeValue } from './cardWords';
import type { IconName } from './Icon';
import { Meter } from './Meter';
import type { SessionModel } from './sessionModel';

interface Plate {
  readonly tool: string;
  readonly icon: IconName;
  readonly reading: Written;
  readonly note: string;
}

/** Names and shares of what the identifier tells apart. */
const gases = () =>
  [
    ['R-134a', 'identifier.r134aShare'],
    ['R-12', 'identifier.r12Share'],
    ['R-1234yf', 'identifier.r1234yfShare'],
    [word('work.meter.hydrocarbon'), 'identifier.hydrocarbonShare'],
    [word('work.meter.airGas'), 'identifier.airShare'],
  ] as const satisfies readonly (readonly [string, string])[];

/** Shares under this are none. */
const SOME = 0.005;

function gasPlate(session: SessionModel): Plate[] {
  const found = gases()
    .map(([gas, signal]) => ({ gas, share: session.signal(signal) }))
    .filter(({ share }) => share >= SOME)
    .sort((a, b) => b.share - a.share);
  const told = found.map(({ gas, share }) => {
    const reading = writeValue(session, share, 'share');
    return reading ? { gas, reading } : null;
  });
  const [first, ...rest] = told.filter((one) => one !== null);
  if (!first) return [];
  const others = rest.map(({ gas, reading }) => `${gas} ${inWords(reading)}`).join(', ');
  const note = others === '' ? first.gas : `${first.gas}; ${others}`;
  // With the number, as a low screen has no room for the note.
  const reading = { ...first.reading, unit: `${first.reading.unit} ${first.gas}` };
  return [{ tool: 'identifier', icon: 'sample', reading, note }];
}

function scalePlate(session: SessionModel, tool: string, icon: IconName, signal: string): Plate[] {
  const isOn = session.view().devices.some(({ id, onto }) => id === tool && onto !== null);
  const reading = writeValue(session, session.signal(signal), 'kg');
  return isOn && reading ? [{ tool, icon, reading, note: word('work.meter.tankScale') }] : [];
}

function vacuumPlate(session: SessionModel): Plate[] {
  const pressurePa = session.signal('micronGauge.absolutePressurePa');
  if (Number.isNaN(pressurePa)) return [];
  const reading = writeVacuum(pressurePa, session.units().pressure);
  return [{ tool: 'micron-gauge', icon: 'dial', reading, note: word('work.meter.absolute') }];
}

function levelPlate(session: SessionModel, tool: string, icon: IconName, signal: string): Plate[] {
  const level = session.signal(signal);
  if (!(level > 0)) return [];
  const reading = { number: plainNumber(level), unit: word('work.meter.ofEight') };
  return [{ tool, icon, reading, note: word('work.meter.lastPlace') }];
}

export function ToolMeters(props: { readonly session: SessionModel }): JSX.Element {
  const plates = createMemo(() => [
    ...vacuumPlate(props.session),
    ...scalePlate(props.session, 'recovery-machine', 'machine', 'recoveryScale.massKg'),
    ...scalePlate(props.session, 'charging-tank', 'tank', 'chargingScale.massKg'),
    ...gasPlate(props.session),
    ...levelPlate(props.session, 'detector', 'probe', 'detector.ticks'),
    ...levelPlate(props.session, 'soap', 'bubbles', 'soap.bubbles'),
    ...levelPlate(props.session, 'uv-lamp', 'lamp', 'lamp.glow'),
  ]);
  return (
    <Show when={plates().length > 0}>
      <div class="pair">
        <For each={plates()}>
          {(plate) => (
            <Meter
              icon={plate.icon}
              name={benchToolName(plate.tool)}
              reading={plate.reading}
              note={plate.note}
            />
          )}
        </For>
      </div>
    </Show>
  );
}
