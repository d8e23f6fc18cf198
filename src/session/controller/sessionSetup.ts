/**
 * Vocabulary of the scenario controller: it hears accepted commands (`do.`), edges of watches (`rise.`, `fall.`), a
 * critical mistake, and two notices of the core. It never hears a step. States stand in states/, one a file.
 */
import { setup } from 'xstate';
import type { CommandId } from '../../plant/commandSpecs';
import type { Mode } from '../corePort';
import type { WatchId } from '../watches/registry';

export type ControllerEvent =
  | { readonly type: `do.${CommandId}` }
  | { readonly type: `rise.${WatchId}` | `fall.${WatchId}` }
  | { readonly type: 'rise.critical' }
  | { readonly type: 'plantBuilt' }
  | { readonly type: 'scored' };

interface ControllerContext {
  readonly mode: Mode;
}

export const sessionSetup = setup({
  types: {
    context: {} as ControllerContext,
    events: {} as ControllerEvent,
    input: {} as ControllerContext,
  },
  guards: {
    isScored: ({ context }) => context.mode !== 'explore',
    stopsAtCriticals: ({ context }) => context.mode === 'practice',
  },
});
