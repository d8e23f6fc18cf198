/**
 * Somebody at the text twin: says lines, and has of the car what `sit` gives: readings, cues and controls, never truth (an
 * assessed session has none in its frames). While a stage runs it is looked on each second, as a person does who waits.
 */
import { layoutOf } from '../../layout/layouts';
import { tracePort } from '../../layout/trace';
import { STEPS_PER_SECOND } from '../../session/clock';
import { wordsOf } from '../../session/plan/planWords';
import type { Scenario } from '../../session/scenario/scenario';
import { sensesOf } from '../../twin/senses';
import { type Sitting, sitDown } from '../../twin/sit';
import type { Stage } from '../forecast/stages';
import { type Way, waysOf } from '../lazy/ways';

/** What was seen in each second of a stage. */
export type Film = readonly Second[];

export interface Second {
  readonly step: number;
  /** By signal; NaN where there was nothing to read. */
  readonly saw: ReadonlyMap<string, number>;
}

export interface Seat {
  readonly sitting: Sitting;
  /** What was said, refused lines too. */
  readonly lines: readonly string[];
  /** Low port, if it can be found. */
  readonly lowPort: string | undefined;
  /** Whether the line was taken. */
  say(line: string): boolean;
  sees(signal: string): number;
  /** Goggles on, papers read, covers off, pipes followed. */
  prepare(): void;
  /** Hoses of the bench on, once; whether a gauge is on that side then. */
  couple(): void;
  uncouple(): void;
  /** Switched off, hoses off, caps and covers on. */
  leave(): void;
  /** Puts the car through a stage and watches `signals`. */
  film(stage: Stage, signals: readonly string[]): Film;
  watch(seconds: number, signals: readonly string[]): Film;
}

const SAFE = ['wear goggles', 'wear gloves', 'wear overall', 'door open', 'chock on', 'heater off'];
const ASKED = ['ask converted', 'ask opened', 'ask filled', 'ask used'];
const ZEROED = ['zero charging', 'zero low', 'zero high'];
const OFF = ['ac off', 'engine 0', 'bypass low-switch off', 'run 1 min'];
const HOSES_SETTLE = 'run 30 s';

export function seatFor(scenario: Scenario, seed: number): Seat {
  const { data } = scenario;
  const sitting = sitDown(scenario, 'assessed', seed);
  const layout = layoutOf(data.vehicle);
  const lines: string[] = [];
  let coupled: readonly Way[] | null = null;
  const uncovered: string[] = [];
  const say = (line: string): boolean => {
    lines.push(line);
    return sitting.hear(line).taken;
  };
  const sees = (signal: string): number => sensesOf(sitting.core).value(signal);
  const seat: Seat = {
    sitting,
    lines,
    lowPort: layout.ports.find(({ id }) => tracePort(layout, id).side === 'low')?.id,
    say,
    sees,
    prepare() {
      for (const line of ['begin', ...SAFE]) say(line);
      for (const sheet of sitting.core.choices('sheet')) say(`read-sheet ${sheet}`);
      for (const line of ASKED) say(line);
      for (const { id } of layout.ports) {
        if (isCovered(sitting, id) && say(`cover ${id} off`)) uncovered.push(id);
        say(`trace ${id}`);
        say(`judge-port ${id} ${tracePort(layout, id).side}`);
      }
    },
    couple() {
      if (coupled) return;
      coupled = waysOf(scenario, false).hoses;
      if (coupled.length === 0) return;
      for (const line of ZEROED) if (isForHere(sitting, line)) say(line);
      for (const { hose, port, route } of coupled) {
        if (isCapped(sitting, port)) say(`cap ${port} off`);
        say(`couple ${hose} ${port} ${route}`);
        say(`coupler ${hose} open`);
      }
      say(HOSES_SETTLE);
    },
    uncouple() {
      for (const { hose, port } of coupled ?? []) {
        say(`coupler ${hose} shut`);
        say(`uncouple ${hose}`);
        say(`cap ${port} on`);
      }
      if (coupled) coupled = [];
    },
    leave() {
      if (sees('engine.rpm') > 0 || sees('ac.on') === 1) for (const line of OFF) say(line);
      seat.uncouple();
      for (const port of uncovered) say(`cover ${port} on`);
      say('finish');
    },
    film(stage, signals) {
      for (const command of stage.commands) if (changes(sitting, command)) say(wordsOf(command));
      return seat.watch(stage.seconds, signals);
    },
    watch(seconds, signals) {
      lines.push(`run ${seconds} s`);
      const { core } = sitting;
      const frame = new Float64Array(core.channels.length);
      const at = signals.map((signal) => core.channels.findIndex(({ id }) => id === signal));
      return Array.from({ length: seconds }, () => {
        core.advance(STEPS_PER_SECOND);
        core.writeFrame(frame);
        const saw = new Map(signals.map((signal, i) => [signal, at[i] < 0 ? Number.NaN : frame[at[i]]]));
        return { step: core.step, saw };
      });
    },
  };
  return seat;
}

const portView = ({ core }: Sitting, port: string) => core.view().ports.find(({ id }) => id === port);
const isCapped = (sitting: Sitting, port: string): boolean => portView(sitting, port)?.capOn === true;
const isCovered = (sitting: Sitting, port: string): boolean => portView(sitting, port)?.covered === true;
const isForHere = ({ core }: Sitting, line: string): boolean =>
  core.choices('gauge').includes(line.split(' ')[1]);
const changes = ({ core }: Sitting, command: Stage['commands'][number]): boolean =>
  core.wouldRefuse(command) === null;
