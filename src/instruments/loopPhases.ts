/**
 * Phases along the loop from its four state points: in a coil the enthalpy is taken to change evenly from inlet to outlet,
 * so the quality at each place follows from pressure and enthalpy. Good enough for a picture of textures, and said to be
 * no more than that.
 */

import type { StatePoint } from './phGeometry';
import { qualityAt, type SaturationLine } from './saturation';

export type Phase = 'liquid' | 'mixture' | 'vapour';

export interface Pass {
  readonly phase: Phase;
  /** Height of liquid in the pass at its start and end, 0..1 by volume as drawn. */
  readonly liquidFrom: number;
  readonly liquidTo: number;
}

export function phaseOf(quality: number): Phase {
  if (quality <= 0) return 'liquid';
  return quality < 1 ? 'mixture' : 'vapour';
}

/** A tenth of the mass as vapour fills most of a pipe; drawn level follows the square root so that it can be seen. */
const drawnLevel = (quality: number): number => {
  const liquid = Math.max(0, Math.min(1, 1 - quality));
  return 0.85 * liquid;
};

/** Passes of a coil between two state points at the pressure of the inlet, in the order of flow. */
export function coilPasses(
  line: SaturationLine,
  inlet: StatePoint,
  outlet: StatePoint,
  count: number,
): Pass[] {
  const at = (share: number): number =>
    qualityAt(
      line,
      inlet.pressurePa,
      inlet.enthalpyJPerKg + share * (outlet.enthalpyJPerKg - inlet.enthalpyJPerKg),
    );
  return Array.from({ length: count }, (_, i) => {
    const from = at(i / count);
    const to = at((i + 1) / count);
    const middle = at((i + 0.5) / count);
    return { phase: phaseOf(middle), liquidFrom: drawnLevel(from), liquidTo: drawnLevel(to) };
  });
}

export const phaseAt = (line: SaturationLine, point: StatePoint): Phase =>
  phaseOf(qualityAt(line, point.pressurePa, point.enthalpyJPerKg));
