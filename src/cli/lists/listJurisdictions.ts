/** Places with what they allow whom, each with its rule, its source and how far it may be trusted. */
import { ACTS } from '../../../shared/schema/jurisdiction';
import { PLACES } from '../../../shared/schema/persons';
import { jurisdictionOf } from '../../session/law/jurisdictions';
import { word } from '../../words/words';

export const listJurisdictions = () =>
  PLACES.map((id) => {
    const { known, acts } = jurisdictionOf(id);
    return {
      id,
      title: word(`law.place.${id}`),
      isScored: known,
      acts: ACTS.map((act) => {
        const { who, rule, source, trust } = acts[act];
        return {
          act,
          title: word(`law.act.${act}`),
          who,
          rule,
          source,
          trust: word(`law.trust.${trust}`),
          check: word('law.check'),
        };
      }),
    };
  });
