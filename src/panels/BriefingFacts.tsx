/** Who the trainee is, where, what that place allows, and what the weather and the room are like. */
import { type JSX, Show } from 'solid-js';
import type { Act } from '../../shared/schema/jurisdiction';
import { inWords, plainNumber, writeTemperature } from '../instruments/displayUnits';
import { jurisdictionOf } from '../session/law/jurisdictions';
import { say, word } from '../words/words';
import type { ScenarioFacts, SessionModel } from './sessionModel';

const SEA_LEVEL_PA = 101_325;
/** The standard atmosphere's scale, from memory: h = 44,330 m (1 - (p / 101,325 Pa)^(1 / 5.255)). */
const STANDARD_M = 44_330;
const STANDARD_POWER = 1 / 5.255;
const ROUND_M = 100;
/** Less is weather, not height. */
const LEAST_M = 250;

/** Height over the sea that the air's pressure stands for, in hundreds of metres; 0 where it tells nothing. */
export function altitudeM(pressurePa: number): number {
  const height = STANDARD_M * (1 - (pressurePa / SEA_LEVEL_PA) ** STANDARD_POWER);
  return height < LEAST_M ? 0 : Math.round(height / ROUND_M) * ROUND_M;
}

function weatherWords(session: SessionModel): string {
  const { airTemperatureK, humidityPercent, sunWPerM2, pressurePa } = session.facts;
  const height = altitudeM(pressurePa);
  return [
    word('shelf.airText', {
      temperature: inWords(writeTemperature(airTemperatureK, session.units().temperature)),
      humidity: plainNumber(humidityPercent),
    }),
    sunWPerM2 > 0
      ? word('task.brief.sun', { power: `${plainNumber(sunWPerM2)} W/m²` })
      : word('task.brief.noSun'),
    ...(height > 0 ? [word('task.brief.altitude', { height: `${plainNumber(height)} m` })] : []),
  ].join(word('task.brief.join'));
}

function siteWords({ site }: ScenarioFacts): string {
  const volume = `${plainNumber(site.volumeM3)} m³`;
  if (site.kind === 'outdoors') return word('task.site.outdoors');
  return site.kind === 'garage-with-pit'
    ? word('task.site.garage-with-pit', { volume })
    : word('task.site.garage', { volume });
}

/** Acts that the place allows this person, or does not. */
function actsOf({ country, person }: ScenarioFacts, allowed: boolean): string {
  const { acts } = jurisdictionOf(country);
  return (Object.keys(acts) as Act[])
    .filter((act) => acts[act].who.includes(person) === allowed)
    .map((act) => say({ id: `task.act.${act}` }))
    .join(word('task.brief.join'));
}

function Law(props: { readonly facts: ScenarioFacts }): JSX.Element {
  const may = (): string => actsOf(props.facts, true);
  const mayNot = (): string => actsOf(props.facts, false);
  return (
    <Show when={jurisdictionOf(props.facts.country).known}>
      <dt>{word('task.brief.law')}</dt>
      <dd>
        <Show when={may() !== ''}>{word('task.brief.may', { acts: may() })} </Show>
        <Show when={mayNot() !== ''}>{word('task.brief.mayNot', { acts: mayNot() })} </Show>
        {word('task.brief.check')}
      </dd>
    </Show>
  );
}

export function BriefingFacts(props: { readonly session: SessionModel }): JSX.Element {
  const { facts } = props.session;
  return (
    <dl class="kv">
      <dt>{word('task.brief.who')}</dt>
      <dd>{say({ id: `task.person.${facts.person}` })}</dd>
      <dt>{word('task.brief.where')}</dt>
      <dd>{say({ id: `task.country.${facts.country}` })}</dd>
      <Law facts={facts} />
      <dt>{word('task.brief.place')}</dt>
      <dd>{siteWords(facts)}</dd>
      <dt>{word('task.brief.weather')}</dt>
      <dd>{weatherWords(props.session)}</dd>
    </dl>
  );
}
