/** What is heard, smelt or seen to blow in the bay as long as it lasts, in words: nobody has to hear it to know. */
import { say, type WordId } from '../words/words';
import type { SessionModel } from './sessionModel';

const LASTING = [
  ['leak.hissing', 'twin.search.hiss'],
  ['metering.hissing', 'twin.car.hisses'],
  ['compressor.knocking', 'twin.car.knocks'],
  ['compressor.rattling', 'twin.car.rattles'],
  ['clutch.squealing', 'twin.car.squeals'],
  ['clutch.smelling', 'twin.car.smells'],
  ['device.recovery-machine.running', 'panels.heard.recovery'],
  ['device.vacuum-pump.running', 'panels.heard.pump'],
  ['identifier.sampling', 'twin.device.sampling'],
  ['recoveryTank.full', 'panels.heard.tankFull'],
] as const satisfies readonly (readonly [string, WordId])[];

export function heardNow(session: SessionModel): string[] {
  const said: string[] = LASTING.filter(([signal]) => session.signal(signal) === 1).map(([, id]) =>
    say({ id }),
  );
  if (session.view().hoses.some(({ id }) => session.signal(`spray.${id}`) === 1))
    said.push(say({ id: 'panels.heard.spray' }));
  if (session.view().opened.length > 0) said.push(say({ id: 'panels.heard.opened' }));
  return said;
}
