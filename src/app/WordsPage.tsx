import { WordsScreen } from '../panels/WordsScreen';
import type { WorkUi } from '../panels/workUi';
import { readWords } from '../session/plan/planWords';
import { decimalPoint } from '../units/decimalPoint';
import { happeningWords } from './notices';
import { ordersFor, unreadWords } from './ordersHelp';
import type { SessionPageProps } from './SessionPage';
import type { RunningSession } from './session';

const HEARD_LINES = 8;

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
    else model.runOn(reading.act.untilNotable ? 'notable' : reading.act.steps);
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
