/** What stands before a metering device, read at the start of a step; reused, so nothing is allocated. */
export interface MeteringInlet {
  /** Total, air included: what drives the flow. */
  pressurePa: number;
  downstreamPa: number;
  /** Saturation pressure at the liquid's own temperature. */
  saturationPa: number;
  /** Below saturation at `pressurePa`; 0 in the dome and above. */
  subcoolingK: number;
  /** 0 for liquid, 1 for vapour. */
  quality: number;
  /** Of saturated liquid and vapour, and of the flow itself (air included), m3/kg. */
  liquidM3PerKg: number;
  vapourM3PerKg: number;
  volumeM3PerKg: number;
}

export function createInlet(): MeteringInlet {
  return {
    pressurePa: 0,
    downstreamPa: 0,
    saturationPa: 0,
    subcoolingK: 0,
    quality: 0,
    liquidM3PerKg: 0.001,
    vapourM3PerKg: 0.02,
    volumeM3PerKg: 0.02,
  };
}

/** Below this drop the root is made linear, so that two sides can come to rest: Pa, and a share of the pressure. */
const SEAT_PA = 8000;
const SEAT_SHARE = 0.1;

/** Pressure drop below which a metering device's flow is linear in the drop. */
export function seatPa(pressurePa: number): number {
  const share = SEAT_SHARE * pressurePa;
  return share < SEAT_PA ? share : SEAT_PA;
}
