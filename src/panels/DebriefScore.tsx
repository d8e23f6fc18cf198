/** Score in parts: five bars of equal length, and the findings with their marks, points and evidence sentences. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import type { Permission } from '../../shared/schema/jurisdiction';
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
import { isWordId, say, type WordId, word } from '../words/words';
import { Segmented } from './controls';
import { valueAt } from './DebriefNumbers';
import { subtitle } from './DebriefStory';
import type { DebriefData, DebriefDomain, DebriefFinding, DebriefModel, Place } from './debriefModel';
import { domainName } from './domainName';
import { Icon } from './Icon';

const BAR_WIDTH = 200;

export function DomainBars(props: {
  readonly domains: readonly DebriefDomain[];
  readonly findings: readonly DebriefFinding[];
}): JSX.Element {
  const isIdle = (id: string): boolean =>
    props.findings.every(({ domain, kind }) => domain !== id || kind === 'idle' || kind === 'advised');
  return (
    <ul class="doms">
      <For each={props.domains}>
        {(domain) => {
          const share = domain.possible > 0 ? domain.earned / domain.possible : 0;
          const said = word('debrief.domainOf', {
            got: plainNumber(domain.earned),
            full: plainNumber(domain.possible),
          });
          return (
            <li>
              <span>{domainName(domain.id)}</span>
              <svg class="dbar" viewBox={`0 0 ${BAR_WIDTH} 12`} preserveAspectRatio="none" aria-hidden="true">
                <rect class="rest" width={BAR_WIDTH} height="12" />
                <rect class="got" width={BAR_WIDTH * share} height="12" />
                <rect class="rim" x="0.5" y="0.5" width={BAR_WIDTH - 1} height="11" />
              </svg>
              <span class="dv">{said}</span>
              <Show when={isIdle(domain.id)}>
                <span class="xs mut dn">{word('debrief.idleDomain')}</span>
              </Show>
            </li>
          );
        }}
      </For>
    </ul>
  );
}

function weighing({ isWeighing, suspects }: DebriefData): string {
  if (isWeighing) return word('debrief.suspects.weighing');
  return suspects === null ? '' : word('debrief.suspects.weighed');
}

function gateWords({ gates }: DebriefData): string {
  if (gates.length === 0) return '';
  return [...gates.map((reason) => word(`debrief.gate.${reason}`)), word('debrief.notForGate')].join(' ');
}

export function DebriefScore(props: {
  readonly debrief: DebriefModel;
  readonly identity: JSX.Element;
}): JSX.Element {
  const data = (): DebriefData => props.debrief.data;
  const verdict = (): string => {
    if (!data().scored) return word('debrief.explored');
    const mark = String(data().passMark);
    return data().passed ? word('debrief.passed', { mark }) : word('debrief.notPassed', { mark });
  };
  return (
    <section class="panel sc" aria-label={word('debrief.scoreTitle')} data-region tabIndex={-1}>
      <div class="row wrap">
        <Show when={data().scored}>
          <div>
            <span class="bigsc">{Math.round(data().reported)}</span>{' '}
            <span class="mut">{word('debrief.of')}</span>
          </div>
        </Show>
        <span class="sp" />
        <span class="chip" classList={{ on: data().passed && data().scored }}>
          <Show when={data().passed && data().scored}>
            <Icon name="tick" size={14} />
          </Show>
          {verdict()}
        </span>
      </div>
      <p class="s mut">
        {subtitle(props.debrief)}{' '}
        {data().criticalCount > 0
          ? word('debrief.critical', { count: String(data().criticalCount) })
          : word('debrief.noCritical')}{' '}
        {gateWords(data())}
      </p>
      <p class="s mut" role="status">
        {weighing(data())}
      </p>
      <Show when={data().scored}>
        <DomainBars domains={data().domains} findings={data().findings} />
      </Show>
      {props.identity}
    </section>
  );
}

/** Disc with tick: all points. Half disc: part. Dashed ring with dash: none. Octagon: critical. Dash: not come up. */
export function FindingMark(props: { readonly kind: DebriefFinding['kind'] }): JSX.Element {
  const label = (): string => word(`debrief.kind.${props.kind}` as WordId as 'debrief.kind.all');
  return (
    <svg width="22" height="22" role="img" aria-label={label()}>
      <Show when={props.kind === 'all'}>
        <circle cx="11" cy="11" r="10" class="mark-all" />
        <path d="M6 11.5l3.5 3.5L16 8" class="mark-tick" />
      </Show>
      <Show when={props.kind === 'part'}>
        <circle cx="11" cy="11" r="9" class="mark-ring" />
        <path d="M11 2a9 9 0 0 0 0 18z" class="mark-ink" />
      </Show>
      <Show when={props.kind === 'none'}>
        <circle cx="11" cy="11" r="9" class="mark-ring" stroke-dasharray="3.5 2.5" />
        <path d="M6.5 11h9" class="mark-ring" />
      </Show>
      <Show when={props.kind === 'idle'}>
        <path d="M6 11h10" class="mark-ring" />
      </Show>
      <Show when={props.kind === 'advised'}>
        <path d="M11 5v8M11 16.5v.5" class="mark-ring" />
      </Show>
      <Show when={props.kind === 'critical'}>
        <path d="M7 1h8l6 6v8l-6 6H7l-6-6V7z" class="octagon" />
        <path d="M7 7l8 8M15 7l-8 8" class="mark-x" />
      </Show>
    </svg>
  );
}

const KEPT: readonly string[] = ['all', 'idle'];
const isLost = (finding: DebriefFinding): boolean => !KEPT.includes(finding.kind);

const lawHere = ({ rule, source, trust }: Permission): string =>
  word('law.here', { rule, source, trust: word(`law.trust.${trust}`) });

/** Why the rule is there. */
function whyWords({ rule }: DebriefFinding): string | null {
  const id = `rules.${rule}.why`;
  return isWordId(id) ? say({ id }) : null;
}

/** Whether a gauge could ever show a pressure of this car. */
const couldRead = ({ actions }: DebriefData): boolean =>
  actions.some(({ command }) => command.do === 'couple');

/** What stood in the car at the moment of a finding. */
function thenWords(data: DebriefData, seconds: number, units: DisplayUnits): string {
  const side = (id: 'low' | 'high'): string =>
    inWords(writePressure(valueAt(data, id, seconds), units.pressure, id));
  return word('debrief.thenIn', {
    low: side('low'),
    high: side('high'),
    charge: inWords(writeMass(valueAt(data, 'charge', seconds), units.mass)),
    vent: inWords(writeTemperature(valueAt(data, 'vent', seconds), units.temperature, 1)),
  });
}

function Row(props: {
  readonly data: DebriefData;
  readonly finding: DebriefFinding;
  readonly units: DisplayUnits;
  readonly scored: boolean;
  readonly onShow: (place: Place) => void;
}): JSX.Element {
  const seconds = (): number => props.finding.step / STEPS_PER_SECOND;
  const points = (): string => {
    const got = plainNumber(props.finding.earned, Number.isInteger(props.finding.earned) ? 0 : 1);
    return word('debrief.points', { got, full: plainNumber(props.finding.possible) });
  };
  return (
    <li data-rule={props.finding.rule}>
      <FindingMark kind={props.finding.kind} />
      <div>
        <div class="row">
          <b class="s">{domainName(props.finding.domain)}</b>
          <span class="sp" />
          <Show when={props.scored && props.finding.kind !== 'idle' && props.finding.kind !== 'advised'}>
            <span class="xs">{points()}</span>
          </Show>
        </div>
        <p class="s">{sayFinding(props.finding, writerOf(props.units), couldRead(props.data))}</p>
        <Show when={isLost(props.finding)}>
          <Show when={whyWords(props.finding)}>{(why) => <p class="s mut">{why()}</p>}</Show>
          <Show when={props.finding.step < props.data.lastStep}>
            <p class="xs mut">{thenWords(props.data, seconds(), props.units)}</p>
          </Show>
        </Show>
        <Show when={props.finding.kind !== 'idle' && props.finding.law}>
          {(law) => <p class="xs mut">{lawHere(law())}</p>}
        </Show>
        <button
          type="button"
          class="linkb"
          onClick={() => props.onShow({ seconds: seconds(), deed: props.finding.deed })}
        >
          {word('debrief.seeAgain', { time: writeClock(seconds()) })}
        </button>
      </div>
    </li>
  );
}

export function Finds(props: {
  readonly data: DebriefData;
  readonly units: DisplayUnits;
  readonly onShow: (place: Place) => void;
}): JSX.Element {
  const anyLost = props.data.findings.some(isLost);
  const anyAdvice = props.data.findings.some(({ kind }) => kind === 'advised');
  const [which, setWhich] = createSignal<'lost' | 'all'>(anyLost ? 'lost' : 'all');
  const order = { critical: 0, none: 1, part: 2, advised: 3, all: 4, idle: 5 } as const;
  const shown = () =>
    props.data.findings
      .filter((finding) => which() === 'all' || isLost(finding))
      .sort((a, b) => order[a.kind] - order[b.kind] || a.step - b.step);
  return (
    <section class="panel fl" aria-label={word('debrief.why')} data-region tabIndex={-1}>
      <div class="row wrap">
        <h2>{word('debrief.why')}</h2>
        <span class="sp" />
        <Segmented
          label={word('debrief.which')}
          options={[
            {
              value: 'lost' as const,
              label: anyAdvice ? word('debrief.lostAndAdvice') : word('debrief.lost'),
            },
            {
              value: 'all' as const,
              label: word('debrief.all', { count: String(props.data.findings.length) }),
            },
          ]}
          value={which()}
          onChoose={setWhich}
        />
      </div>
      <ul class="finds" tabIndex={0} aria-label={word('debrief.why')}>
        <For each={shown()} fallback={<li class="s">{word('debrief.nothingLost')}</li>}>
          {(finding) => (
            <Row
              data={props.data}
              finding={finding}
              units={props.units}
              scored={props.data.scored}
              onShow={props.onShow}
            />
          )}
        </For>
      </ul>
    </section>
  );
}
