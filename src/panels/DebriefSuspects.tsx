/** The shrinking list of suspects: what was read, who was ruled out by it, who was left. In words: no shares, no bits. */
import { For, type JSX, Show } from 'solid-js';
import { writeClock } from '../instruments/displayUnits';
import { writerOf } from '../instruments/evidenceUnits';
import type { SuspectLeft, SuspectsLeft } from '../scoring/suspectsLeft';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import type { DebriefModel } from './debriefModel';

/** More than this are counted, and the likeliest named. */
const MOST_NAMED = 6;
const FIRST_NAMED = 3;

export function DebriefSuspects(props: {
  readonly debrief: DebriefModel;
  readonly onShow: (seconds: number) => void;
}): JSX.Element {
  const suspects = () => props.debrief.data.suspects;
  const nothing = (): string => {
    const { isWeighing, scored } = props.debrief.data;
    if (isWeighing) return word('debrief.suspects.weighing');
    return scored ? word('debrief.suspects.none') : word('debrief.suspects.explored');
  };
  return (
    <Show when={suspects()} fallback={<p class="s">{nothing()}</p>}>
      {(story) => (
        <div>
          <p class="s">{word('debrief.suspects.before', { count: String(story()[0]?.left.length ?? 0) })}</p>
          <Show when={story().length === 1}>
            <p class="s">{word('debrief.suspects.noReadings')}</p>
          </Show>
          <ol class="suspects">
            <For each={story().slice(1)}>
              {(after) => (
                <li class="s">
                  <button
                    type="button"
                    class="linkb"
                    onClick={() => props.onShow(after.step / STEPS_PER_SECOND)}
                  >
                    {word('debrief.show', { time: writeClock(after.step / STEPS_PER_SECOND) })}
                  </button>
                  <div>
                    <p>{readings(after, props.debrief)}</p>
                    <p class="mut">
                      {ruledOut(after)} {left(after, props.debrief)}
                    </p>
                  </div>
                </li>
              )}
            </For>
          </ol>
        </div>
      )}
    </Show>
  );
}

function readings({ seen }: SuspectsLeft, { nameOf, units }: DebriefModel): string {
  const write = writerOf(units);
  const told = seen.map(({ channel, value, unit }) => {
    const reading =
      unit === 'bool'
        ? word(value === 1 ? 'debrief.suspects.turns' : 'debrief.suspects.stands')
        : write({ source: channel, value, unit });
    return word('debrief.suspects.seen', { what: whatOf(channel, nameOf), reading });
  });
  return `${told.join(word('debrief.suspects.join'))}.`;
}

/** `air@centre-vent`, `fan.fan.turning`, `clutch.turning`, or a plain channel. */
function whatOf(channel: string, nameOf: DebriefModel['nameOf']): string {
  const [instrument, place] = channel.split('@');
  if (place !== undefined)
    return word('debrief.suspects.at', { channel: nameOf(instrument), place: nameOf(place) });
  const looked = /^(?:fan\.)?(.+)\.turning$/.exec(channel);
  return nameOf(looked ? looked[1] : channel);
}

function ruledOut({ gone }: SuspectsLeft): string {
  return gone === 0
    ? word('debrief.suspects.goneNone')
    : word('debrief.suspects.gone', { count: String(gone) });
}

function left(after: SuspectsLeft, { nameOf }: DebriefModel): string {
  const isMany = after.left.length > MOST_NAMED;
  const named = isMany ? after.left.slice(0, FIRST_NAMED) : after.left;
  const list = named.map((suspect) => nameFor(suspect, nameOf)).join(word('debrief.suspects.join'));
  return isMany
    ? word('debrief.suspects.leftMany', { count: String(after.left.length), list })
    : word('debrief.suspects.left', { list });
}

function nameFor({ causes, standing }: SuspectLeft, nameOf: DebriefModel['nameOf']): string {
  const [one = '', other] = causes.map(nameOf);
  const cause = other === undefined ? one : word('debrief.suspects.both', { one, other });
  if (standing === 'proven') return word('debrief.suspects.proven', { cause });
  return standing === 'likely' ? word('debrief.suspects.likely', { cause }) : cause;
}
