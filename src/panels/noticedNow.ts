/** What is smelt, or seen to stand open or full, as long as it lasts, in words. */
import { say, type WordId } from '../words/words';
import type { SessionModel } from './sessionModel';

const LASTING = [
  ['clutch.smelling', 'twin.car.smells'],
  ['identifier.sampling', 'twin.device.sampling'],
  ['recoveryTank.full', 'panels.heard.tankFull'],
] as const satisfies readonly (readonly [string, WordId])[];

export function noticedNow(session: SessionModel): string[] {
  const said: string[] = LASTING.filter(([signal]) => session.signal(signal) === 1).map(([, id]) =>
    say({ id }),
  );
  if (session.view().opened.length > 0) said.push(say({ id: 'panels.heard.opened' }));
  return said;
}
