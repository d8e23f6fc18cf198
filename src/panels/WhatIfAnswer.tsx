/** What came of doing it otherwise: where the two part, both scores, what stood in the car, and what could not be done. */
import { For, type JSX, Show } from 'solid-js';
import {
  type DisplayUnits,
  inWords,
  plainNumber,
  writeClock,
  writeMass,
  writePressure,
  writeTemperature,
} from '../instruments/displayUnits';
import { writerOf } from '../instruments/evidenceUnits';
import { sayFinding } from '../scoring/sayFinding';
import { STEPS_PER_SECOND } from '../session/clock';
import { word } from '../words/words';
import { commandWords } from './commandWords';
import type { DebriefModel } from './debriefModel';
import { domainName } from './domainName';
import { WhatIfProgress } from './WhatIfProgress';
import type { WhatIfEnd, WhatIfModel, WhatIfTold } from './whatIfModel';

const SECONDS_PER_MINUTE = 60;
/** Pressures nearer than this read the same on a gauge [guess]; 2 psi. */
const SAME_PA = 13_800;
const SAME_KG = 0.005;
const MOST_SENTENCES = 3;

const score = (value: number): string => plainNumber(Math.round(value));

/** Numbers that changed, each as it was and as it is. */
function differences({ before, after }: WhatIfTold, scored: boolean, units: DisplayUnits): string[] {
  const said: string[] = [];
  const pair = (was: string, is: string) => ({ before: was, after: is });
  const mass = (kg: number): string => inWords(writeMass(kg, units.mass));
  if (scored && score(before.reported) !== score(after.reported))
    said.push(word('debrief.whatIf.score', pair(score(before.reported), score(after.reported))));
  if (scored)
    after.domains.forEach(({ id, earned }, at) => {
      const was = before.domains[at].earned;
      if (score(was) !== score(earned))
        said.push(
          word('debrief.whatIf.domain', { domain: domainName(id), ...pair(score(was), score(earned)) }),
        );
    });
  const minutes = (after.lastStep - before.lastStep) / STEPS_PER_SECOND / SECONDS_PER_MINUTE;
  if (Math.abs(minutes) >= 0.5)
    said.push(
      minutes > 0
        ? word('debrief.whatIf.longer', { minutes: plainNumber(minutes) })
        : word('debrief.whatIf.shorter', { minutes: plainNumber(-minutes) }),
    );
  const masses = [
    ['chargeKg', 'debrief.whatIf.charge'],
    ['sluggedKg', 'debrief.whatIf.slugged'],
    ['ventedKg', 'debrief.whatIf.vented'],
  ] as const;
  for (const [key, id] of masses)
    if (mass(before[key]) !== mass(after[key]))
      said.push(word(id, pair(mass(before[key]), mass(after[key]))));
  const vent = ({ ventK }: WhatIfEnd): string => inWords(writeTemperature(ventK, units.temperature, 1));
  if (Math.abs(before.ventK - after.ventK) > 0.2)
    said.push(word('debrief.whatIf.vent', pair(vent(before), vent(after))));
  return said;
}

/** Another charge under the same needles. */
function blindNeedles({ before, after }: WhatIfTold, units: DisplayUnits): string | null {
  if (Math.abs(before.chargeKg - after.chargeKg) < SAME_KG) return null;
  const near = (a: number, b: number): boolean => Math.abs(a - b) < SAME_PA;
  if (!near(before.highPa, after.highPa) || !near(before.lowPa, after.lowPa)) return null;
  return word('debrief.whatIf.samePressures', {
    within: inWords(writePressure(SAME_PA, units.pressure, 'low')),
  });
}

interface Told {
  /** Where the two part, as something to press; null where they never do. */
  readonly parting: string | null;
  readonly whole: string;
}

function toldWords(told: WhatIfTold, debrief: DebriefModel): Told {
  const said = differences(told, debrief.data.scored, debrief.units);
  const blind = blindNeedles(told, debrief.units);
  const step = told.firstDifferentStep;
  const time = writeClock((step ?? 0) / STEPS_PER_SECOND);
  if (said.length === 0 && blind === null) {
    if (step === null) return { parting: null, whole: word('debrief.whatIf.noDifference') };
    return {
      parting: word('debrief.whatIf.unseen', { time }),
      whole: word(told.sameState ? 'debrief.whatIf.together' : 'debrief.whatIf.hardly'),
    };
  }
  const list = [...said, ...(blind === null ? [] : [blind])].join(word('debrief.whatIf.join'));
  return {
    parting: step === null ? null : word('debrief.whatIf.apart', { time }),
    whole: told.sameState ? `${word('debrief.whatIf.sameCar')} ${list}` : list,
  };
}

export function WhatIfAnswer(props: {
  readonly debrief: DebriefModel;
  readonly whatIf: WhatIfModel;
  readonly onShow: (seconds: number) => void;
}): JSX.Element {
  const phaseWords = (): string => {
    const phase = props.whatIf.phase();
    if (phase === 'failed') return word('debrief.whatIf.failed');
    if (phase === 'preparing') return word('debrief.whatIf.preparing');
    if (phase === 'running') return word('debrief.whatIf.running');
    if (phase === 'stopped') return word('debrief.whatIf.stopped');
    return '';
  };
  const refusedWords = (told: WhatIfTold): string[] =>
    told.refused.map((refused) =>
      word('debrief.whatIf.refusedWhy', {
        number: String(numberOf(refused.number)),
        action: commandWords(refused.command, props.debrief.nameOf),
        reason: props.whatIf.refusalWords(refused),
      }),
    );
  const numberOf = (logNumber: number): number =>
    props.debrief.data.actions.find((action) => action.logNumber === logNumber)?.number ?? logNumber;
  return (
    <div class="wi-answer">
      <div role="status">
        <Show when={props.whatIf.problem()}>{(problem) => <p class="s">{problem()}</p>}</Show>
        <Show when={props.whatIf.told()} fallback={<p class="s mut">{phaseWords()}</p>}>
          {(told) => (
            <>
              <p class="s">
                <Show when={toldWords(told(), props.debrief).parting}>
                  {(parting) => (
                    <>
                      <button
                        type="button"
                        class="linkb"
                        data-next
                        onClick={() => props.onShow((told().firstDifferentStep ?? 0) / STEPS_PER_SECOND)}
                      >
                        {parting()}
                      </button>{' '}
                    </>
                  )}
                </Show>
                <strong>{toldWords(told(), props.debrief).whole}</strong>
              </p>
              <For each={refusedWords(told())}>{(sentence) => <p class="s">{sentence}</p>}</For>
              <For each={told().changed.slice(0, MOST_SENTENCES)}>
                {({ after }) => (
                  <p class="xs mut">
                    {word('debrief.whatIf.afterwards', {
                      sentence: sayFinding(after, writerOf(props.debrief.units)),
                    })}
                  </p>
                )}
              </For>
              <Show when={props.debrief.data.weighed !== null && told().changed.length > 0}>
                <p class="xs mut">{word('debrief.whatIf.weighed')}</p>
              </Show>
            </>
          )}
        </Show>
      </div>
      <WhatIfProgress whatIf={props.whatIf} lastStep={props.debrief.data.lastStep} />
    </div>
  );
}
