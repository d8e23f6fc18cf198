/** See-inside as a page of its own: loaded only when it is asked for. */
import './styles/insidePage.css';
import { ClockBar } from '../panels/ClockBar';
import { Inside } from '../panels/Inside';
import type { RunningSession } from './session';

export interface InsidePageProps {
  readonly session: RunningSession;
  readonly onBay: () => void;
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

export default function InsidePage(props: InsidePageProps) {
  return (
    <Inside
      session={props.session.model}
      clock={<ClockBar session={props.session.model} />}
      onBay={props.onBay}
      onHome={props.onHome}
      onMenu={props.onMenu}
      onHelp={props.onHelp}
    />
  );
}
