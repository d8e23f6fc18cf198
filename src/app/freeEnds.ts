/** Hoses on the bench whose end for a can is free: no can and no device is on it. */
import type { CanInlet } from '../bay/bayFrame';
import type { SessionModel } from '../panels/sessionModel';

/** Has a place of its own beside the end of a hose. */
const BESIDE = 'micron-gauge';

export function freeEnds(session: SessionModel): CanInlet[] {
  const { cans, devices } = session.view();
  const taken = new Set([...cans, ...devices.filter(({ id }) => id !== BESIDE)].map(({ onto }) => onto));
  return session.choices('can-inlet').filter((id): id is CanInlet => isInlet(id) && !taken.has(id));
}

const isInlet = (id: string): id is CanInlet => id === 'charging' || id === 'utility';
