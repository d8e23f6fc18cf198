/** What may be mixed in a loop with its own refrigerant. */
import type { RefrigerantId } from '../refrigerant/refrigerant';

/** `hydrocarbon`: a blend of propane and isobutane, as sold for refilling. */
export type ForeignId = RefrigerantId | 'hydrocarbon';

/** In the order in which the network's numbers count them, from 1. */
export const FOREIGN_IDS: readonly ForeignId[] = ['R-134a', 'R-12', 'R-1234yf', 'hydrocarbon'];
