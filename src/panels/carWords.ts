/** Engine, cabin controls and bay door in words, as they stand. */
import { plainNumber } from '../instruments/displayUnits';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

export function carWords(session: SessionModel): {
  readonly engine: string;
  readonly cabin: string;
  readonly door: string;
} {
  const rpm = Math.round(session.signal('engine.rpm') / 10) * 10;
  const written = plainNumber(rpm);
  const clutchKnown = session.signal('ac.on') === 1;
  const clutchIn = session.signal('clutch.turning') === 1;
  const running = clutchKnown
    ? clutchIn
      ? word('work.car.clutchIn', { rpm: written })
      : word('work.car.clutchOut', { rpm: written })
    : word('work.car.engineOn', { rpm: written });
  const engine = rpm > 0 ? running : word('work.car.engineOff');
  const onOff = (id: string): string =>
    session.signal(id) === 1 ? word('work.car.on') : word('work.car.off');
  const openShut = (id: string): string =>
    session.signal(id) === 1 ? word('work.car.opened') : word('work.car.shut');
  return {
    engine: session.signal('car.ready') === 1 ? word('work.car.ready') : engine,
    cabin: word('work.car.cabin', {
      ac: onOff('ac.on'),
      blower: plainNumber(session.signal('blower.speed')),
      windows: openShut('windows.open'),
    }),
    door: session.signal('door.open') === 1 ? word('work.car.doorOpen') : word('work.car.doorShut'),
  };
}
