/** What may be mixed in a loop with its own refrigerant. */
import type { RefrigerantId } from '../refrigerant/refrigerant';

/** `hydrocarbon`: a blend of propane and isobutane, as sold for refilling. */
export type ForeignId = RefrigerantId | 'hydrocarbon';
