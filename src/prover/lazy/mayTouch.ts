/** Whether this person may put a gauge on this car: trained for it, and not against a law that is known. */
import { NO_STANDING } from '../../session/law/standing';
import type { Scenario } from '../../session/scenario/scenario';

export function mayTouch({ job: { standing = NO_STANDING } }: Scenario): boolean {
  const isLawful = !standing['law.known'] || standing['law.mayService'];
  return standing['person.trainedForCar'] && isLawful;
}
