/** Generated from shared/words/en/fault.yaml by `npm run words`; do not edit. */
export interface FaultWords {
  'fault.low-charge': never;
  'fault.overcharge': never;
  'fault.leak': never;
  'fault.condenser-fan-dead': never;
  'fault.condenser-air-blocked': never;
  'fault.restricted-orifice': never;
  'fault.weak-compressor': never;
  'fault.clutch-not-engaging': never;
  'fault.nothing-wrong': never;
}
