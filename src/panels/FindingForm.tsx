/** Write a finding: pick readings as the instruments stand now. A number cannot be typed. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { inWords } from '../instruments/displayUnits';
import { word } from '../words/words';
import { writeValue } from './cardWords';
import { carWords } from './carWords';
import { Form } from './Form';
import { Icon } from './Icon';
import type { SessionModel } from './sessionModel';

interface Channel {
  readonly id: string;
  readonly signal: string;
  readonly unit: string;
  readonly face: 'low' | 'high';
}

export const CHANNELS: readonly Channel[] = [
  { id: 'charging-gauge', signal: 'chargingGauge.gaugePressurePa', unit: 'Pa', face: 'low' },
  { id: 'low-gauge', signal: 'lowGauge.gaugePressurePa', unit: 'Pa', face: 'low' },
  { id: 'high-gauge', signal: 'highGauge.gaugePressurePa', unit: 'Pa', face: 'high' },
  { id: 'air', signal: 'airThermometer.temperatureK', unit: 'K', face: 'low' },
  { id: 'line', signal: 'lineThermometer.temperatureK', unit: 'K', face: 'low' },
  { id: 'scale', signal: 'scale.massKg', unit: 'kg', face: 'low' },
  { id: 'micron-gauge', signal: 'micronGauge.absolutePressurePa', unit: 'Pa abs', face: 'low' },
  { id: 'recovery-scale', signal: 'recoveryScale.massKg', unit: 'kg', face: 'low' },
  { id: 'charging-scale', signal: 'chargingScale.massKg', unit: 'kg', face: 'low' },
  { id: 'drained-oil', signal: 'drainedOil.volumeM3', unit: 'm3', face: 'low' },
  { id: 'gas-r134a', signal: 'identifier.r134aShare', unit: 'share', face: 'low' },
  { id: 'gas-r12', signal: 'identifier.r12Share', unit: 'share', face: 'low' },
  { id: 'gas-r1234yf', signal: 'identifier.r1234yfShare', unit: 'share', face: 'low' },
  { id: 'gas-hydrocarbon', signal: 'identifier.hydrocarbonShare', unit: 'share', face: 'low' },
  { id: 'gas-air', signal: 'identifier.airShare', unit: 'share', face: 'low' },
  { id: 'detector', signal: 'detector.ticks', unit: '1', face: 'low' },
  { id: 'soap', signal: 'soap.bubbles', unit: '1', face: 'low' },
  { id: 'lamp', signal: 'lamp.glow', unit: '1', face: 'low' },
];

export function channelReading(session: SessionModel, channel: Channel): string | null {
  const value = session.signal(channel.signal);
  if (Number.isNaN(value)) return null;
  const written = writeValue(session, value, channel.unit, channel.face);
  if (written === null) return null;
  const [place, tool] = [session.probeAt(channel.id), session.nameOf(channel.id)];
  const reading = inWords(written);
  if (place !== null && channel.unit === '1')
    return word('panels.finding.itemAt', { name: tool, place, reading });
  return word('panels.finding.item', { name: place ?? tool, reading });
}

/** At the end of its range an instrument has no number to write down. */
function isReading(session: SessionModel, { signal, unit, face }: Channel): boolean {
  const value = session.signal(signal);
  const written = Number.isNaN(value) ? null : writeValue(session, value, unit, face);
  return written !== null && written.unit !== '';
}

export function FindingForm(props: {
  readonly session: SessionModel;
  readonly onClose: () => void;
}): JSX.Element {
  const [picked, setPicked] = createSignal<readonly string[]>([]);
  const shown = () => CHANNELS.filter((channel) => isReading(props.session, channel));
  const toggle = (id: string): void => {
    setPicked(picked().includes(id) ? picked().filter((one) => one !== id) : [...picked(), id]);
  };
  const write = (): void => {
    if (picked().length === 0) return;
    for (const channel of picked()) props.session.send({ do: 'note-reading', channel });
    props.onClose();
  };
  const preview = (): string =>
    shown()
      .filter((channel) => picked().includes(channel.id))
      .map((channel) => channelReading(props.session, channel))
      .join(', ');
  return (
    <Form
      title={word('panels.finding.title')}
      sub={word('panels.finding.sub')}
      onClose={props.onClose}
      foot={
        <>
          <span class="prev">
            <span class="xs mut">{word('panels.finding.goesOn')}</span>
            <b>{picked().length > 0 ? preview() : word('panels.finding.nothing')}</b>
          </span>
          <button type="button" class="btn" onClick={() => props.onClose()}>
            {word('panels.finding.notYet')}
          </button>
          <button type="button" class="btn pri" aria-disabled={picked().length === 0} onClick={write}>
            {word('panels.finding.write')}
          </button>
        </>
      }
    >
      <p class="slim-note">
        <Icon name="clock" size={18} />
        {word('panels.finding.taken', {
          engine: carWords(props.session).engine,
          cabin: carWords(props.session).cabin,
        })}
      </p>
      <fieldset class="fs">
        <legend>{word('panels.finding.reading')}</legend>
        <Show when={shown().length > 0} fallback={<p class="emp">{word('panels.finding.none')}</p>}>
          <div class="pick">
            <For each={shown()}>
              {(channel) => (
                <button
                  type="button"
                  class="chip"
                  classList={{ on: picked().includes(channel.id) }}
                  aria-pressed={picked().includes(channel.id)}
                  onClick={() => toggle(channel.id)}
                >
                  <Show when={picked().includes(channel.id)}>
                    <Icon name="tick" size={14} />
                  </Show>
                  {channelReading(props.session, channel)}
                </button>
              )}
            </For>
          </div>
        </Show>
      </fieldset>
    </Form>
  );
}
