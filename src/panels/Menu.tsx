/** Menu with settings: units, look, form of the bay, sounds, language. Kept in this browser; no score depends on them. */
import { type JSX, Show } from 'solid-js';
import type { DisplayUnits, MassUnit, PressureUnit, TemperatureUnit } from '../instruments/displayUnits';
import { languages, word } from '../words/words';
import { Segmented } from './controls';
import { Icon } from './Icon';
import { onEscape } from './onEscape';
import { TopBar } from './TopBar';

export type Look = 'auto' | 'light' | 'dark' | 'projector';
export type BayForm = 'drawn' | 'words';
export type Loudness = 'off' | 'quiet' | 'medium' | 'loud';

export interface Settings {
  readonly units: DisplayUnits;
  readonly look: Look;
  readonly bay: BayForm;
  readonly sound: Loudness;
  readonly language: string;
}

export interface MenuProps {
  readonly settings: Settings;
  readonly canGoBack: boolean;
  readonly onChange: (settings: Settings) => void;
  readonly onBack: () => void;
  readonly onHome: () => void;
  readonly onHelp: () => void;
  readonly onCard: () => void;
}

/** Each in its own tongue, so that whoever got lost finds back; names of languages, not translated. */
const OWN_NAMES: Readonly<Record<string, string>> = { en: 'English', es: 'Español' };

function Setting(props: {
  readonly name: string;
  readonly note?: string;
  readonly id?: string;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <div class="setr">
      <div>
        <b>{props.name}</b>
        <Show when={props.note}>
          <small>{props.note}</small>
        </Show>
      </div>
      <div id={props.id}>{props.children}</div>
    </div>
  );
}

function UnitSettings(props: {
  readonly units: DisplayUnits;
  readonly onChange: (units: DisplayUnits) => void;
}): JSX.Element {
  const pressures: readonly PressureUnit[] = ['psi', 'kPa', 'bar'];
  const unitWord = { psi: word('help.unit.psi'), kPa: word('help.unit.kPa'), bar: word('help.unit.bar') };
  return (
    <>
      <Setting name={word('help.pressure')} note={word('help.pressureSub')}>
        <Segmented
          label={word('help.pressure')}
          options={pressures.map((value) => ({ value, label: unitWord[value] }))}
          value={props.units.pressure}
          onChoose={(pressure) => props.onChange({ ...props.units, pressure })}
        />
      </Setting>
      <Setting name={word('help.temperature')}>
        <Segmented
          label={word('help.temperature')}
          options={[
            { value: 'degC' as TemperatureUnit, label: word('help.unit.degC') },
            { value: 'degF' as TemperatureUnit, label: word('help.unit.degF') },
          ]}
          value={props.units.temperature}
          onChoose={(temperature) => props.onChange({ ...props.units, temperature })}
        />
      </Setting>
      <Setting name={word('help.mass')}>
        <Segmented
          label={word('help.mass')}
          options={[
            { value: 'g' as MassUnit, label: word('help.unit.g') },
            { value: 'oz' as MassUnit, label: word('help.unit.oz') },
          ]}
          value={props.units.mass}
          onChoose={(mass) => props.onChange({ ...props.units, mass })}
        />
      </Setting>
    </>
  );
}

export function Menu(props: MenuProps): JSX.Element {
  const change = (part: Partial<Settings>): void => props.onChange({ ...props.settings, ...part });
  onEscape(() => (props.canGoBack ? props.onBack() : props.onHome()));
  return (
    <div>
      <TopBar onHome={props.onHome} onHelp={props.onHelp} />
      <main class="pg menu" id="main">
        <nav class="mn" aria-label={word('help.menu')} data-region tabIndex={-1}>
          <h1>{word('help.menu')}</h1>
          <Show when={props.canGoBack}>
            <button type="button" class="item" onClick={() => props.onBack()}>
              <Icon name="back" />
              {word('help.back')}
            </button>
          </Show>
          <button type="button" class="item" onClick={() => props.onHome()}>
            <Icon name="door" />
            {word('app.scenarios')}
          </button>
          <button type="button" class="item" onClick={() => props.onHelp()}>
            <Icon name="help" />
            {word('help.title')}
          </button>
          <button type="button" class="item" onClick={() => props.onCard()}>
            <Icon name="doc" />
            {word('shelf.carCard')}
          </button>
          <p class="xs mut">{word('help.version')}</p>
        </nav>
        <section class="panel" aria-label={word('help.settings')} data-region tabIndex={-1}>
          <h2>{word('help.settings')}</h2>
          <p class="s mut">{word('help.settingsSub')}</p>
          <Setting name={word('help.language')} id="language">
            <Segmented
              label={word('help.language')}
              options={languages().map((value) => ({ value, label: OWN_NAMES[value] ?? value }))}
              value={props.settings.language}
              onChoose={(language) => change({ language })}
            />
          </Setting>
          <UnitSettings units={props.settings.units} onChange={(units) => change({ units })} />
          <Setting name={word('help.look')} note={word('help.lookSub')}>
            <Segmented
              label={word('help.look')}
              options={[
                { value: 'auto' as Look, label: word('help.auto') },
                { value: 'light' as Look, label: word('help.light') },
                { value: 'dark' as Look, label: word('help.dark') },
                { value: 'projector' as Look, label: word('help.projector') },
              ]}
              value={props.settings.look}
              onChoose={(look) => change({ look })}
            />
          </Setting>
          <Setting name={word('help.bay')} note={word('help.baySub')}>
            <Segmented
              label={word('help.bay')}
              options={[
                { value: 'drawn' as BayForm, label: word('help.drawn') },
                { value: 'words' as BayForm, label: word('help.inWords') },
              ]}
              value={props.settings.bay}
              onChoose={(bay) => change({ bay })}
            />
          </Setting>
          <Setting name={word('help.sound')} note={word('help.soundSub')}>
            <Segmented
              label={word('help.sound')}
              options={[
                { value: 'off' as Loudness, label: word('help.soundOff') },
                { value: 'quiet' as Loudness, label: word('help.soundQuiet') },
                { value: 'medium' as Loudness, label: word('help.soundMedium') },
                { value: 'loud' as Loudness, label: word('help.soundLoud') },
              ]}
              value={props.settings.sound}
              onChoose={(sound) => change({ sound })}
            />
          </Setting>
        </section>
      </main>
    </div>
  );
}
