/** Generated from shared/words/en/faults.yaml by `npm run words`; do not edit. */
export interface FaultsWords {
  'faults.low-charge.title': never;
  'faults.overcharge.title': never;
  'faults.leak.title': never;
  'faults.leak-seal.title': never;
  'faults.leak-hose.title': never;
  'faults.leak-joint.title': never;
  'faults.leak-core.title': never;
  'faults.leak-condenser.title': never;
  'faults.leak-evaporator.title': never;
  'faults.condenser-fan-dead.title': never;
  'faults.condenser-air-blocked.title': never;
  'faults.restricted-orifice.title': never;
  'faults.weak-compressor.title': never;
  'faults.leaking-reed.title': never;
  'faults.clutch-not-engaging.title': never;
  'faults.clutch-slipping.title': never;
  'faults.clutch-stuck-on.title': never;
  'faults.quantity.chargeShare': never;
  'faults.quantity.holeDiameter': never;
  'faults.quantity.seepRate': never;
  'faults.quantity.fanFlowShare': never;
  'faults.quantity.airFlowShare': never;
  'faults.quantity.openAreaShare': never;
  'faults.quantity.pumpingShare': never;
  'faults.quantity.reedLeakFlow': never;
  'faults.quantity.clutchVoltageShare': never;
  'faults.quantity.clutchTorqueShare': never;
  'faults.quantity.clutchDragShare': never;
}
