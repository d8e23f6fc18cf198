/**
 * What gets into a loop by mistake: old stock into a car of the nineties, the new gas into a car made for the old one, the
 * cheaper one into a car of today. Common practice, no source.
 */
import type { RefrigerantId } from '../refrigerant/refrigerant';

export function otherRefrigerant(own: RefrigerantId): RefrigerantId {
  return own === 'R-134a' ? 'R-12' : 'R-134a';
}
