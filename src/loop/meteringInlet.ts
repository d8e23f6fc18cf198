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

/** The same before a restriction in the line, kept while the inlet is moved behind it. */
export interface UpstreamOfLine {
  pressurePa: number;
  downstreamPa: number;
  saturationPa: number;
  quality: number;
  volumeM3PerKg: number;
  /** Share of the volume that is gas, and of the pressure that is air's. */
  gas: number;
  airPart: number;
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

export function createUpstream(): UpstreamOfLine {
  return {
    pressurePa: 0,
    downstreamPa: 0,
    saturationPa: 0,
    quality: 0,
    volumeM3PerKg: 0.02,
    gas: 0,
    airPart: 0,
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
