/** The last ten minutes of what a gauge read, in the reader's unit, with what happened marked on it. */
import { createMemo, type JSX } from 'solid-js';
import { paPerUnit, plainNumber } from '../instruments/displayUnits';
import { StripLane } from '../instruments/StripLane';
import { spanTo } from '../instruments/stripLane';
import { word } from '../words/words';
import { historyMarks } from './historyMarks';
import type { SessionModel } from './sessionModel';

const MINUTES = 10;
const MINUTE_S = 60;

export function LiveStrip(props: {
  readonly session: SessionModel;
  readonly channel: string;
  readonly side: 'low' | 'high' | 'charging';
}): JSX.Element {
  const second = createMemo(() => Math.floor(props.session.clock().seconds));
  const span = createMemo(() => spanTo(second(), MINUTES * MINUTE_S));
  const samples = createMemo(() => {
    second();
    const { seconds, values } = props.session.history(props.channel);
    const unit = paPerUnit[props.session.units().pressure];
    return { seconds: [...seconds], values: values.map((value) => value / unit) };
  });
  const marks = createMemo(() => {
    second();
    return historyMarks(props.session.happened()).filter((mark) => mark.second >= span().from);
  });
  const name = (): string => props.session.nameOf(props.channel.split('.')[0]);
  return (
    <StripLane
      label={word('instrument.strip.label', { minutes: plainNumber(MINUTES), lanes: name() })}
      side={props.side}
      unit={props.session.units().pressure}
      span={span()}
      seconds={samples().seconds}
      values={samples().values}
      marks={marks()}
    />
  );
}
