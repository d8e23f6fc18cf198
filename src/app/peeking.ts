/**
 * A session's model that is read without being followed, but for its language and units: for who draws all of it whenever
 * something is told.
 */
import { untrack } from 'solid-js';
import type { SessionModel } from '../panels/sessionModel';

export function peeking(model: SessionModel): SessionModel {
  const quiet =
    <Asked extends unknown[], T>(read: (...asked: Asked) => T) =>
    (...asked: Asked): T =>
      untrack(() => read(...asked));
  return Object.create(model, {
    signal: { value: quiet(model.signal) },
    view: { value: quiet(model.view) },
    choices: { value: quiet(model.choices) },
    placeOf: { value: quiet(model.placeOf) },
  });
}
