/** What is changed most, as a form. It writes into the text, and shows what the text says: the two are one. */
import { createEffect, createMemo, createSignal, For, type JSX, on, Show } from 'solid-js';
import type { DisplayUnits } from '../instruments/displayUnits';
import { word } from '../words/words';
import type { FormValues } from './edit/formOf';
import { portChanges } from './edit/portChanges';
import type { Along, Wish } from './edit/wish';
import { FaultFields } from './FaultFields';
import { type FormUnit, massUnit, temperatureUnit } from './formUnits';
import { isLowScreen } from './isLowScreen';
import { NumberBox } from './NumberBox';
import { TextBox } from './TextBox';
import type { Written } from './written';

const WEATHER = { leastC: -10, mostC: 50 };
const MOST_CHARGE_G = 3000;
const G_STEP = 10;
const MOST_LETTERS = 300;
/** What stands in brackets behind a car's name; there is no room for it here. */
const INVENTED = /\s*\([^)]*\)$/;

const shown = (value: number | null, unit: FormUnit): number | null =>
  value === null ? null : unit.show(value);

export function FormStrip(props: { readonly written: Written; readonly units: DisplayUnits }): JSX.Element {
  const { written } = props;
  const [said, setSaid] = createSignal('');
  /** While the text cannot be read, what it said before stands there shut, so that nothing jumps about. */
  const form = createMemo<FormValues | null>((before) => written.looked()?.form ?? before, null);
  const isShut = (): boolean => written.looked()?.form === null;
  const vehicles = () => written.vocabulary()?.vehicles ?? [];
  const vehicle = () => vehicles().find(({ id }) => id === form()?.vehicle);

  const temperature = () => temperatureUnit(props.units);
  const mass = () => massUnit(props.units);
  /** What was said of a change stands until the next one, whoever makes it. */
  createEffect(on(written.text, () => setSaid(''), { defer: true }));
  const note = (): string => {
    if (isShut()) return word('workshop.form.unreadable');
    return said() === '' ? word('workshop.form.note') : said();
  };
  const alongText = (along: readonly Along[]): string =>
    word('workshop.form.along', { what: along.map((one) => word(`workshop.along.${one}`)).join(', ') });
  /** Whether it was written. */
  const change = async (wish: Wish): Promise<boolean> => {
    const along = await written.change(wish);
    if (along === null) setSaid(word('workshop.form.noPlace'));
    else setSaid(along.length > 0 ? alongText(along) : word('workshop.form.done'));
    return along !== null;
  };
  /** The new car is as full as the old one was. */
  const changeVehicle = async (select: HTMLSelectElement): Promise<void> => {
    const id = select.value;
    const next = vehicles().find((one) => one.id === id);
    if (!next) return;
    const [before, charge] = [vehicle(), form()?.chargeG];
    const share = before && charge ? charge / before.chargeG : 1;
    const chargeG = share === 1 ? next.chargeG : Math.round((share * next.chargeG) / G_STEP) * G_STEP;
    const ports = portChanges(before?.ports ?? [], next.ports);
    const { refrigerant, persons } = next;
    const isWritten = await change({ set: 'vehicle', to: id, refrigerant, chargeG, ports, persons });
    if (!isWritten) select.value = form()?.vehicle ?? '';
  };
  const ofLabel = (): string => {
    const { symbol, show } = mass();
    const label = vehicle()?.chargeG;
    return label === undefined ? symbol : word('workshop.form.ofLabel', { mass: `${show(label)} ${symbol}` });
  };
  return (
    <details class="ws-form" open={!isLowScreen()}>
      <summary>
        <b>{word('workshop.form.title')}</b> <span class="xs mut">{note()}</span>
      </summary>
      <Show when={form()}>
        {(values) => (
          <fieldset class="ws-fields" disabled={isShut()}>
            <label class="ws-f car">
              <span>{word('workshop.form.vehicle')}</span>
              <select value={values().vehicle} onChange={(event) => void changeVehicle(event.currentTarget)}>
                <Show when={!vehicle()}>
                  <option value={values().vehicle}>{values().vehicle}</option>
                </Show>
                <For each={vehicles()}>
                  {({ id, name }) => (
                    <option value={id} selected={id === values().vehicle}>
                      {name.replace(INVENTED, '')}
                    </option>
                  )}
                </For>
              </select>
            </label>
            <NumberBox
              label={word('workshop.form.temperature')}
              unit={temperature().symbol}
              value={shown(values().temperatureC, temperature())}
              least={temperature().show(WEATHER.leastC)}
              most={temperature().show(WEATHER.mostC)}
              step={temperature().step}
              onSet={(to) => change({ set: 'temperature', toC: temperature().read(to) })}
            />
            <NumberBox
              label={word('workshop.form.humidity')}
              unit="%"
              value={values().humidityPercent}
              least={0}
              most={100}
              step={1}
              onSet={(toPercent) => change({ set: 'humidity', toPercent })}
            />
            <NumberBox
              label={word('workshop.form.charge')}
              unit={ofLabel()}
              value={shown(values().chargeG, mass())}
              least={0}
              most={mass().show(MOST_CHARGE_G)}
              step={mass().step}
              onSet={(to) => change({ set: 'charge', toG: mass().read(to) })}
            />
            <FaultFields written={written} values={values()} onChange={(wish) => void change(wish)} />
            <TextBox
              label={word('workshop.form.complaint')}
              value={values().complaint}
              most={MOST_LETTERS}
              onSet={(to) => change({ set: 'complaint', to })}
            />
          </fieldset>
        )}
      </Show>
      <p class="vh" role="status">
        {said()}
      </p>
    </details>
  );
}
