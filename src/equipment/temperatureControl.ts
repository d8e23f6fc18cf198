/**
 * The cabin's temperature control: the share of the vents' air that its door sends past the heater. Half the way of the
 * knob sends less than half of the air [guess].
 */
export const HEATER_SHARE = { coldest: 0, middle: 0.4, warmest: 1 } as const;
export type TemperatureSetting = keyof typeof HEATER_SHARE;
