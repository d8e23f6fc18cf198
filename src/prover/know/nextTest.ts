/**
 * The test that tells most for its minutes: of those that can be done as the car stands, and of the next stages. Further on
 * is looked only where nothing here is worth its minutes, since ghosts have to be lived for it; a stage may be passed over,
 * none is gone back to. What empties the loop comes last, as nothing can be read of it afterwards.
 */
import { TELLS_NOTHING } from '../../suspects/tellsNothing';
import type { Suspicion } from './suspicion';
import type { Test } from './testsOf';
import { costOf, stageOf, type Whereabouts } from './whereabouts';

/** Nats a minute that need no looking further [guess]. */
const WORTH_IT = 0.1;

interface Found {
  readonly test: Test;
  readonly worth: number;
}

export function nextTest(suspicion: Suspicion, tests: readonly Test[], here: Whereabouts): Test | null {
  const among = (some: readonly Test[]): Test | null => bestAmong(suspicion, some, here);
  return among(tests.filter((test) => !empties(test))) ?? among(tests.filter(empties));
}

const empties = ({ probes: [{ tool }] }: Test): boolean => tool === 'recovery-machine';

function bestAmong(suspicion: Suspicion, tests: readonly Test[], here: Whereabouts): Test | null {
  const bestIn = (stage: number): Found | null =>
    tests
      .filter((test) => stageOf(test, here) === stage)
      .map((test) => ({ test, nats: suspicion.wouldTell(test.probes) }))
      .filter(({ nats }) => nats >= TELLS_NOTHING)
      .map(({ test, nats }): Found => ({ test, worth: nats / costOf(test, here) }))
      .reduce(better, null);
  let best = bestIn(here.at);
  if (best && best.worth >= WORTH_IT) return best.test;
  for (let stage = here.at + 1; stage < here.stages.length; stage++) {
    const found = bestIn(stage);
    if (found) best = better(best, found);
    if (best) return best.test;
  }
  return null;
}

const better = (best: Found | null, found: Found): Found =>
  best === null || found.worth > best.worth ? found : best;
