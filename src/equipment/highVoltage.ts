/**
 * The circuit that drives an electric compressor: 350 V; after the service plug is out its condensers empty with a lag of 150 s
 * [guess]. Under 60 V of direct current nobody has to be kept from it (UN R100). A hundredth of PAG in the oil spoils what
 * insulates the motor (collision-repair body's note on high-voltage compressors).
 */
export const HIGH_VOLTAGE = { volts: 350, emptyS: 150, safeVolts: 60, strangeOilShare: 0.01 } as const;
