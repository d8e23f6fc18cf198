/** Generated from shared/words/en/workshop.yaml by `npm run words`; do not edit. */
export interface WorkshopWords {
  'workshop.title': never;
  'workshop.text': never;
  'workshop.form.times': 'times';
  'workshop.form.gramsAYear': 'grams';
}
