/**
 * A session by words: one line in, what a person would see out. The same words as a plan's lines; `run 10 s` and `run
 * until something happens` let the clock run; `help` lists what is possible now, `look around` what is perceived. Never
 * the truth behind a reading.
 */
import type { PlantEvent } from '../plant/commandSpecs';
import type { Mode, SessionCore } from '../session/corePort';
import { openSession } from '../session/openSession';
import { type PlanAct, readWords } from '../session/plan/planWords';
import type { Scenario } from '../session/scenario/scenario';
import { writeFigures } from '../session/writeQuantity';
import { isWordId, say, word } from '../words/words';
import { lookedLines, portLines, tracedLines } from './closer';
import { sayCardLine, sayHappening, sayRefusal, sayUnread } from './hear';
import { helpLines } from './helpLines';
import { ownerAnswer } from './ownerAnswer';
import { perceive } from './perceive';
import { sheetLines } from './sheets';

export interface Heard {
  readonly lines: readonly string[];
  /** Whether the session took the line. */
  readonly taken: boolean;
}

export interface Sitting {
  readonly core: SessionCore;
  /** Complaint and what is to be delivered. */
  greet(): readonly string[];
  hear(line: string): Heard;
}

export function sitDown(scenario: Scenario, mode: Mode, seed: number): Sitting {
  const { data } = scenario;
  const told: PlantEvent[] = [];
  const core = openSession(scenario, { mode, seed, observe: ({ moment }) => told.push(...moment.events) });
  const around = (): string[] => perceive(core).map(({ message }) => say(message));

  const afterwards = (stepsBefore: number): string[] => {
    const lines = told.splice(0).flatMap((event) => {
      const text = sayHappening({ ...event, step: core.step, notable: false });
      return text === null ? [] : [text];
    });
    const { stopped } = core.view();
    if (stopped !== null) lines.push(stopLine(stopped.rule, stopped.rewindStep));
    return core.step > stepsBefore ? [...lines, ...around()] : lines;
  };
  const act = (done: PlanAct): Heard => {
    const before = core.step;
    if (done.kind === 'wait') {
      let notable: string | null = null;
      for (let time = 0; time < done.times; time++)
        ({ notable } = core.advance(done.steps, done.untilNotable));
      return { lines: [...held(notable), ...afterwards(before)], taken: true };
    }
    const { command } = done;
    const cards = core.view().card.length;
    const outcome = core.send(command);
    if (!outcome.ok) {
      const reason = sayRefusal(outcome.reason, outcome.params);
      return { lines: [word('twin.sit.refused', { reason })], taken: false };
    }
    // What was lived through a second time on the way back is no news.
    if (command.do === 'rewind') told.splice(0, told.length, ...outcome.events);
    const lines = afterwards(before);
    if (command.do === 'begin') lines.push(...portLines(data.vehicle, core), ...around());
    if (command.do === 'read-sheet')
      lines.push(...sheetLines(data, String(command.sheet), core.view().conversionLabel));
    if (command.do === 'ask') lines.push(ownerAnswer(data, String(command.about)));
    if (command.do === 'trace') lines.push(...tracedLines(data.vehicle, String(command.port)));
    if (command.do === 'look') lines.push(...lookedLines(data.vehicle, core, String(command.at)));
    if (command.do === 'hint')
      lines.push(word('twin.sit.hint', { hint: writeFigures(data.hints[Number(command.level) - 1]) }));
    lines.push(
      ...core
        .view()
        .card.slice(cards)
        .map((line) => sayCardLine(line)),
    );
    if (lines.length === 0) lines.push(word('twin.sit.done'));
    return { lines, taken: true };
  };
  return {
    core,
    greet: () => [
      data.title,
      word('twin.sit.complaint', { complaint: data.complaint }),
      ...data.deliver.map(({ text }) => word('twin.sit.deliver', { what: text })),
    ],
    hear(line) {
      const text = line.trim();
      if (text === 'help') return { lines: helpLines(core), taken: true };
      if (text === 'look around') return { lines: around(), taken: true };
      const reading = readWords(text);
      if ('act' in reading) return act(reading.act);
      const reason = sayUnread(reading.problem.reason, reading.problem.params);
      return { lines: [word('twin.sit.unclear', { reason })], taken: false };
    },
  };
}

/** Why the clock stands, where something made it stand. */
function held(notable: string | null): string[] {
  const id = `happening.watch.${notable}`;
  return notable !== null && isWordId(id)
    ? [word('twin.sit.held', { what: say({ id } as { id: typeof id }) })]
    : [];
}

function stopLine(rule: string, step: number): string {
  const id = `rules.${rule}.why`;
  return word('twin.sit.stopped', { why: isWordId(id) ? say({ id }) : rule, step: String(step) });
}
