/** The places whose rules are known, checked when the project was built; `check-first` is the one that is none. */
import type { Jurisdiction } from '../../../shared/schema/jurisdiction';
import type { Place } from '../../../shared/schema/persons';

const files = import.meta.glob<Jurisdiction>('../../../shared/jurisdictions/*.yaml', {
  eager: true,
  import: 'default',
});
const byId = new Map(Object.values(files).map((one) => [one.id, one]));

/** Throws `RangeError` for a place without a file. */
export function jurisdictionOf(id: Place): Jurisdiction {
  const found = byId.get(id);
  if (!found) throw new RangeError(`no jurisdiction "${id}"; there is ${[...byId.keys()].join(', ')}`);
  return found;
}
