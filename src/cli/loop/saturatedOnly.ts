/**
 * Superheat, subcooling and condensing over ambient only where there is something to saturate: null on a side whose
 * refrigerant, at its own pressure, would boil under -60 °C at some moment of the averaged stretch (16 kPa absolute with
 * R-134a). No coil of a car gets there with liquid in it; a side that does holds a trace of vapour. Floor: [guess].
 */
import type { LoopResult } from '../../plant/runLoop';

const FLOOR_K = 213.15;

type Saturated = 'superheatK' | 'suctionSuperheatK' | 'subcoolingK';
type OrNull<Part, Names extends keyof Part> = Omit<Part, Names> & Readonly<Record<Names, number | null>>;
type SaturatedResult = Omit<
  OrNull<LoopResult, Saturated | 'condensingOverAmbientK'>,
  'running' | 'leastSaturationK'
> & { readonly running: OrNull<LoopResult['running'], Saturated> };

export function saturatedOnly({ leastSaturationK, ...result }: LoopResult): SaturatedResult {
  const high = (value: number): number | null => (leastSaturationK.high < FLOOR_K ? null : value);
  const low = (value: number): number | null => (leastSaturationK.low < FLOOR_K ? null : value);
  const of = (from: Readonly<Record<Saturated, number>>): Readonly<Record<Saturated, number | null>> => ({
    superheatK: low(from.superheatK),
    subcoolingK: high(from.subcoolingK),
    suctionSuperheatK: low(from.suctionSuperheatK),
  });
  return {
    ...result,
    ...of(result),
    condensingOverAmbientK: high(result.condensingOverAmbientK),
    running: { ...result.running, ...of(result.running) },
  };
}
