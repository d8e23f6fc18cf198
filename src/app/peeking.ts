/** A session's model whose signals and view are read without being followed: for who draws all of them whenever something is told. */
import { untrack } from 'solid-js';
import type { SessionModel } from '../panels/sessionModel';

export function peeking(model: SessionModel): SessionModel {
  const signal: SessionModel['signal'] = (id) => untrack(() => model.signal(id));
  const view: SessionModel['view'] = () => untrack(model.view);
  return Object.create(model, { signal: { value: signal }, view: { value: view } });
}
