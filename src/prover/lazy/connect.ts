/** Gauges zeroed, then hoses on with the engine off and led clear; not by who is not trained for this car, or may not. */
import type { TidyHands } from './tidyHands';
import { waysOf } from './ways';

const GAUGES = ['zero charging', 'zero low', 'zero high'] as const;

/** `charges`: with the charging hose on the low side. */
export function connect({ give, scenario }: TidyHands, charges: boolean): void {
  give(...GAUGES);
  for (const { hose, port, route } of waysOf(scenario, charges).hoses) {
    give(`cover ${port} off`, `cap ${port} off`, `couple ${hose} ${port} ${route}`, `coupler ${hose} open`);
  }
}
