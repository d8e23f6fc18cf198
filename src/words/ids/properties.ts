/** Generated from shared/words/en/properties.yaml by `npm run words`; do not edit. */
export interface PropertiesWords {
  'properties.summary': never;
  'properties.buildSummary': never;
  'properties.fluid': never;
  'properties.given': never;
  'properties.in': never;
  'properties.source': never;
  'properties.noColumn': 'found' | 'name' | 'place' | 'wanted';
  'properties.notANumber': 'found' | 'place';
  'properties.notAllowed': 'allowed' | 'given' | 'option';
}
