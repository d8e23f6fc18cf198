/** A job for the one-bottle plant, and short ways to play it. */
import type { Command } from '../../src/plant/commandSpecs';
import type { Mode, SessionCore, SessionLog } from '../../src/session/corePort';
import { type CoreOptions, sessionCore } from '../../src/session/sessionCore';
import type { SessionJob } from '../../src/session/sessionRun';
import { type OnePlantOptions, onePlant } from './onePlant';

export const oneJob: SessionJob = {
  scenarioId: 'one-bottle',
  scenarioHash: '0000000000000001',
  hintLevels: 3,
  deliveries: [{ id: 'noted', done: { event: 'noted', subject: 'scale' } }],
  criticals: [
    {
      id: 'eyes',
      never: { all: [{ event: 'can-opened' }, { signal: 'gear.goggles', is: 'off' }] },
    },
    { id: 'caught', never: { signal: 'hose.*.caught', is: 'on' } },
  ],
};

interface Setting {
  readonly mode?: Mode;
  readonly seed?: number;
  readonly log?: SessionLog;
  readonly observe?: CoreOptions['observe'];
  readonly plant?: OnePlantOptions;
}

export function oneCore({ mode = 'practice', seed = 1, log, observe, plant }: Setting = {}): SessionCore {
  return sessionCore({
    job: oneJob,
    mode,
    seed,
    plant: onePlant({ seed, ...plant }),
    ...(log ? { log } : {}),
    ...(observe ? { observe } : {}),
  });
}

/** Sends every command and fails on the first refusal. */
export function give(core: SessionCore, ...commands: readonly Command[]): void {
  for (const command of commands) {
    const outcome = core.send(command);
    if (!outcome.ok)
      throw new Error(`${command.do} refused: ${outcome.reason} ${JSON.stringify(outcome.params)}`);
  }
}

export const connected: readonly Command[] = [
  { do: 'wear', item: 'goggles' },
  { do: 'cap', port: 'port-b', to: 'off' },
  { do: 'couple', hose: 'charging', port: 'port-b', route: 'mat' },
  { do: 'coupler', hose: 'charging', to: 'open' },
];
export const feeding: readonly Command[] = [
  { do: 'tap', can: 'can-1', onto: 'charging' },
  { do: 'can-valve', can: 'can-1', turn: 8 },
];
