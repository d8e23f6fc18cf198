/**
 * Returnable tank of clean refrigerant on a scale, with one valve on its top: vapour comes upright, liquid upside down.
 * Size, weights and conductances are guesses after common tanks of about six kilograms.
 */
export const CHARGING_TANK = {
  volumeM3: 7e-3,
  wallJPerK: 2200,
  tareKg: 4.2,
  netKg: 5,
  airWPerK: 3,
  valveCdaM2: 2.5e-6,
} as const;
