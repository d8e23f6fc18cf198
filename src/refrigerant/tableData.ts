/**
 * The numbers of one fluid's tables, as built and as stored. The saturation columns have one value a
 * saturation node. The two patches (liquid and vapour side of the dome) hold differences from the dome's edge in the same row, row
 * by row; they are 0 on the edge itself, so the look-up is continuous across it.
 */
export interface SaturationData {
  readonly temperatureK: Float64Array;
  readonly liquidEnthalpy: Float64Array;
  readonly vapourEnthalpy: Float64Array;
  readonly liquidVolume: Float64Array;
  /** p v of saturated vapour, J/kg. */
  readonly vapourProduct: Float64Array;
  readonly liquidEntropy: Float64Array;
}

export interface PatchData {
  /** K from the edge. */
  readonly temperature: Float32Array;
  /** Liquid: v from the edge, m3/kg. Vapour: p v from the edge, J/kg. */
  readonly volume: Float32Array;
  /** J/(kg K) from the edge. */
  readonly entropy: Float32Array;
}

export interface TableData {
  readonly topPressurePa: number;
  readonly saturation: SaturationData;
  readonly liquid: PatchData;
  readonly vapour: PatchData;
}
