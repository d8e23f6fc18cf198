/** A session's model whose signals are read without being followed one by one: for who draws all of them whenever something is told. */
import { untrack } from 'solid-js';
import type { SessionModel } from '../panels/sessionModel';

export function peeking(model: SessionModel): SessionModel {
  const signal: SessionModel['signal'] = (id) => untrack(() => model.signal(id));
  return Object.create(model, { signal: { value: signal } });
}
