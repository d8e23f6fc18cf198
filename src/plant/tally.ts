/** Sums and remembered values of the executive, in one small array beside the network's numbers. */
export const TALLY = {
  step: 0,
  /** Refrigerant that went through couplers into the loop, less what came back, kg. */
  intoLoopKg: 1,
  highestGaugePa: 2,
  trips: 3,
  clutchIn: 4,
  highSwitch: 5,
  reliefOpen: 6,
  /** Liquid to the compressor that has been told as an event, kg. */
  sluggedToldKg: 7,
  /** First of the steps at which the clutch last came in, a ring. */
  clutchRing: 8,
} as const;
export const CLUTCH_RING = 32;
/** Where the next engagement goes. */
export const CLUTCH_RING_AT = TALLY.clutchRing + CLUTCH_RING;

/** How refrigerant got to the air; in the tally a sum for each, kg. */
export const VENT_CAUSES = ['leak', 'opened', 'purge', 'spray', 'relief', 'sample', 'pump', 'other'] as const;
export type VentCause = (typeof VENT_CAUSES)[number];
const VENTED_AT = CLUTCH_RING_AT + 1;
export const ventedAt = (cause: VentCause): number => VENTED_AT + VENT_CAUSES.indexOf(cause);

/** What a search for leaks goes by. */
const SEARCH_AT = VENTED_AT + VENT_CAUSES.length;
export const SEARCH = {
  /** All that has gone to the room, refrigerant, kg: to see what came since. */
  ventedKg: SEARCH_AT,
  /** Refrigerant in the air round the car, and in the evaporator's case, kg. */
  inAirKg: SEARCH_AT + 1,
  inCaseKg: SEARCH_AT + 2,
  /** Dye in the loop, kg, and the share of it that has gone round with the oil. */
  dyeKg: SEARCH_AT + 3,
  dyeRound: SEARCH_AT + 4,
  /** First of the places: dye that has come out at each, kg. */
  dyeOut: SEARCH_AT + 5,
} as const;
export const MOST_PLACES = 64;
/** First of the places: oil that lies outside at each, kg. */
export const OIL_OUT_AT = SEARCH.dyeOut + MOST_PLACES;
const COMPRESSOR_AT = OIL_OUT_AT + MOST_PLACES;
/** What has been told of the compressor: damage as a whole, its thermal switch, and damage by each of four causes. */
export const COMPRESSOR = {
  wear: COMPRESSOR_AT,
  thermalOpen: COMPRESSOR_AT + 1,
  wearTold: COMPRESSOR_AT + 2,
} as const;
/** What the place and the people in it are exposed to. */
const HAZARD_AT = COMPRESSOR.wearTold + 4;
export const HAZARD = {
  /** Carbon monoxide in the place, m3. */
  coM3: HAZARD_AT,
  /** Refrigerant vented of both kinds that the air has been told of, kg. */
  ownVentedKg: HAZARD_AT + 1,
  foreignVentedKg: HAZARD_AT + 2,
  /** Vapour in the room, in the pit, and what of it burns in the cloud round the open joint, mol. */
  roomMol: HAZARD_AT + 3,
  pitMol: HAZARD_AT + 4,
  cloudMol: HAZARD_AT + 5,
  /** Refrigerant that went through a flame, kg. */
  decomposedKg: HAZARD_AT + 6,
  /** Exhaust manifold; heat of the block that the coolant has not seen yet, and how far it has seen it, K. */
  manifoldK: HAZARD_AT + 7,
  blockOverK: HAZARD_AT + 8,
  soakK: HAZARD_AT + 9,
  /** Liquid that met bare skin and open eyes, kg, and the coldest of it, K. */
  skinKg: HAZARD_AT + 10,
  eyeKg: HAZARD_AT + 11,
  contactK: HAZARD_AT + 12,
  /** Into the loop since the compressor last turned, with the engine on and cooling asked for, kg. */
  fedStandingKg: HAZARD_AT + 13,
  /** `intoLoopKg` when it was looked at last. */
  intoLoopSeenKg: HAZARD_AT + 14,
  /** Let out by hand and not by leak or relief, at the last look, kg. */
  byHandKg: HAZARD_AT + 15,
  /** First of three: heat that a hose with a coupler has had over what rubber bears, K s. */
  hoseHeatKS: HAZARD_AT + 16,
} as const;
export const TALLY_COUNT = HAZARD.hoseHeatKS + 3;
