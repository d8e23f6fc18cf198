/** Which system of the car a fault belongs to, for whoever came near it and not to it. */
import { FAULT_GROUPS, type FaultGroup } from './registry';

/** A loop that is short and one that leaks are one matter. */
const SHORT = 'low-charge';

/** Whether two causes are of one system; one that is no fault has none. */
export function areOfOneSystem(a: string, b: string): boolean {
  const [one, other] = [systemsOf(a), systemsOf(b)];
  return one.some((system) => other.includes(system));
}

function systemsOf(cause: string): FaultGroup[] {
  const groups = Object.entries(FAULT_GROUPS) as [FaultGroup, readonly { readonly id: string }[]][];
  const own = groups.filter(([, faults]) => faults.some(({ id }) => id === cause)).map(([group]) => group);
  return cause === SHORT ? [...own, 'leaks'] : own;
}
