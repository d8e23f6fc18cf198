/** Generated from shared/words/en/refusal.yaml by `npm run words`; do not edit. */
export interface RefusalWords {
  'refusal.already': never;
  'refusal.alreadyWorn': never;
  'refusal.notWorn': never;
  'refusal.engineStalls': never;
  'refusal.engineRuns': never;
  'refusal.couplerInTheWay': never;
  'refusal.noCoupler': never;
  'refusal.hoseTorn': never;
  'refusal.alreadyCoupled': never;
  'refusal.portTaken': never;
  'refusal.capOn': never;
  'refusal.noWay': never;
  'refusal.notCoupled': never;
  'refusal.noGaugeSet': never;
  'refusal.gaugeOnCar': never;
  'refusal.gaugeHoldsPressure': never;
  'refusal.nothingToRead': never;
  'refusal.canTapped': never;
  'refusal.tapTaken': never;
  'refusal.noTap': never;
  'refusal.canLoose': never;
  'refusal.leansOnScale': never;
  'refusal.notInHand': never;
  'refusal.unknownCommand': 'name';
  'refusal.unknownArgument': 'allowed' | 'value';
  'refusal.missingArgument': 'name';
  'refusal.outOfRange': 'maximum' | 'minimum' | 'name' | 'step';
  'refusal.fit.other-kind': never;
  'refusal.fit.too-narrow': never;
  'refusal.fit.too-wide': never;
  'refusal.fit.other-refrigerant': never;
}
