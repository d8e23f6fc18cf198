/** Whether a kept session is done: its log, without what was taken back, ends the job. There is nothing to go on with then. */
import type { SessionLog } from '../session/corePort';
import { liveLog } from '../session/liveLog';

export const isFinished = (log: SessionLog): boolean =>
  liveLog(log.commands).some(({ command }) => command.do === 'finish');
