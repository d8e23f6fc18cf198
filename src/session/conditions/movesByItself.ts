/** Can a signal change in a step in which nothing happened and nobody did anything? What people set does not. */
import type { SignalSpec } from '../../plant/signalTypes';

/** Follow commands as controls do, although they are seen and heard; a hose that is caught says so with an event. */
const SET_BY_HAND = /^(engine\.rpm|hose\.[^.]+\.caught)$/;
/** How long something that was set has held. */
const GROWS = 'test.heldRatio';

export const movesByItself = ({ id, kind }: SignalSpec): boolean =>
  kind === 'control' ? id === GROWS : !SET_BY_HAND.test(id);
