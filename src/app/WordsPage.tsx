/** The bay in words as a page: the written line goes the way of every command. */
import type { RunOn } from '../panels/sessionModel';
import { WordsScreen } from '../panels/WordsScreen';
import type { WorkUi } from '../panels/workUi';
import { STEPS_PER_SECOND } from '../session/clock';
import { readWords } from '../session/plan/planWords';
import { decimalPoint } from '../units/decimalPoint';
import { happeningWords } from './notices';
import { ordersFor, unreadWords } from './ordersHelp';
import type { SessionPageProps } from './SessionPage';
import type { RunningSession } from './session';

const HEARD_LINES = 8;

const RUN_ON_STEPS: Readonly<Record<number, RunOn>> = {
  [10 * STEPS_PER_SECOND]: '10s',
  [60 * STEPS_PER_SECOND]: '1min',
  [300 * STEPS_PER_SECOND]: '5min',
};

export interface WordsPageProps {
  readonly session: RunningSession;
  readonly ui: WorkUi;
  readonly page: SessionPageProps;
  readonly onBay: () => void;
}

export default function WordsPage(props: WordsPageProps) {
  const { model } = props.session;
  const onLine = (line: string): string | null => {
    const reading = readWords(decimalPoint(line));
    if ('problem' in reading) return unreadWords(line, reading.problem, model.choices);
    if (reading.act.kind === 'command') props.ui.session.send(reading.act.command);
    else model.runOn(reading.act.untilNotable ? 'notable' : (RUN_ON_STEPS[reading.act.steps] ?? '1min'));
    return null;
  };
  const heard = () =>
    model
      .view()
      .happened.flatMap((happening) => {
        const text = happeningWords(happening, model.nameOf);
        return text === null ? [] : [{ step: happening.step, text }];
      })
      .slice(0, HEARD_LINES);
  return (
    <WordsScreen
      ui={props.ui}
      onLine={onLine}
      orders={() => ordersFor(model.choices)}
      heard={heard}
      onConnect={(hose) =>
        props.ui.show({ kind: 'tool', tool: hose === 'charging' ? 'charging' : 'gauge-set' })
      }
      onBay={props.onBay}
      onHome={props.page.onHome}
      onMenu={props.page.onMenu}
      onHelp={props.page.onHelp}
    />
  );
}
