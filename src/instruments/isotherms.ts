/** Temperatures that have a line in the pressure-enthalpy diagram, K; the last are over what any saturation line reaches. */
export const ISOTHERMS_K = [253.15, 273.15, 293.15, 313.15, 333.15, 353.15, 373.15, 393.15] as const;
