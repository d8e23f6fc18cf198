/**
 * The numbers of one fluid's tables, as built and as stored. Node orders: saturation by pressure node; vapour row by row
 * (pressure node, then superheat node); liquid by even steps of enthalpy along the saturated-liquid line.
 */
export interface TableData {
  readonly topPressurePa: number;
  readonly saturation: {
    readonly temperatureK: Float64Array;
    readonly liquidEnthalpy: Float64Array;
    readonly vapourEnthalpy: Float64Array;
    readonly liquidVolume: Float64Array;
    /** p v of saturated vapour, J/kg. */
    readonly vapourProduct: Float64Array;
    readonly liquidEntropy: Float64Array;
  };
  readonly vapour: {
    readonly temperatureK: Float32Array;
    /** p v, J/kg. */
    readonly product: Float32Array;
    /** Entropy above that of saturated vapour at the same pressure, J/(kg K). */
    readonly entropyRise: Float32Array;
  };
  readonly liquid: {
    readonly firstEnthalpy: number;
    readonly lastEnthalpy: number;
    readonly temperatureK: Float64Array;
    readonly pressurePa: Float64Array;
    readonly volume: Float64Array;
    readonly entropy: Float64Array;
    /** T0 + a dp + b dp^2 and v0 + a dp/(1 + b dp), with dp = p - p0 at the same enthalpy. */
    readonly temperatureRise: Float64Array;
    readonly temperatureBend: Float64Array;
    readonly volumeRise: Float64Array;
    readonly volumeBend: Float64Array;
  };
}
