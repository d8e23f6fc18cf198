/**
 * A small can of refrigerant: a vessel of its own with liquid and vapour in it, a self-sealing valve, a printed total
 * and a net content that differ, since oil and additives count in the total.
 *
 * Capacity 0.40 L is the most that 49 CFR 178.33d-2 (variation 2Q1) allows; wall, inside and ambient heat transfer and
 * valve area are estimates, no source, set so that an untouched upright can is limited by the heat that leaks in and a
 * held, shaken one empties in about ten minutes (common practice).
 */
export interface CanSpec {
  readonly id: string;
  /** Refrigerant in it when full, kg. */
  readonly netKg: number;
  /** What the print says in large figures, kg: refrigerant, oil and additives together. */
  readonly printedTotalKg: number;
  /** Empty can, kg, with its oil where none is named below: what is left on the scale at the end. */
  readonly tareKg: number;
  /** What is in it besides, kg: it goes with the liquid, and stays behind in a can held upright. */
  readonly oilKg?: number;
  readonly sealerKg?: number;
  readonly dyeKg?: number;
}

export const CAN_VOLUME_M3 = 0.4e-3;
export const CAN_WALL_J_PER_K = 60;
/** Valve and tap, fully open. */
export const CAN_VALVE_CDA_M2 = 0.9e-6;
/** To still air. */
export const CAN_AIR_UA_W_PER_K = 0.45;
/** Round a hand: skin at 33 °C through glove and can wall. */
export const CAN_HAND_UA_W_PER_K = 1.6;
export const HAND_TEMPERATURE_K = 306;
/** In a bowl of warm water, which is kept at 40 °C: the most that is usual for a can. 8 W/K is a guess. */
export const BATH_TEMPERATURE_K = 313.15;
export const CAN_BATH_UA_W_PER_K = 8;
/** Hot from the tap or the kettle: what nobody may use. */
export const HOT_WATER_K = 343.15;
/** Printed on the service texts of makers: no can over 40 °C. Told half a kelvin over it. */
export const CAN_MOST_K = 313.65;
/** A can of the stronger kind must not burst under this, over the air outside: 270 psi (49 CFR 178.33a, from memory). */
export const CAN_BURST_PA = 1.862e6;
export const CAN_BURST_CDA_M2 = 20e-6;
/** How long one shake stirs the liquid and carries drops to the valve. */
export const SHAKE_S = 8;
