/**
 * The sums of a charge by weight: how much, from how many cans, how much out of the last one, and what a hose keeps.
 *
 * A can counts with its net contents. The hose is 1.8 m of 4.8 mm bore, full of liquid or of gas at the day's
 * temperature: mass = volume / specific volume on the saturation line.
 */
import type { Refrigerant } from '../../refrigerant/refrigerant';
import { CONVERTED_SHARE } from './cardInputs';

export interface ChargeSums {
  readonly targetKg: number;
  /** Where it converts: what 80 and 90 % of the old charge would be. */
  readonly between: readonly [fromKg: number, toKg: number] | null;
  readonly fullCans: number;
  /** Out of one more can, by the scale; 0 where the full ones are all. */
  readonly remainderKg: number;
  readonly cansToHave: number;
  readonly hoseLiquidKg: number;
  readonly hoseGasKg: number;
}

const HOSE_M3 = Math.PI * 0.0024 * 0.0024 * 1.8;
/** Less than a kitchen scale tells is nothing to open a can for. */
const NO_REMAINDER_KG = 0.002;

export function chargeSums(
  input: {
    readonly labelChargeKg: number;
    readonly canNetKg: number;
    readonly converts: boolean;
    readonly convertedShare: number;
    readonly ambientK: number;
  },
  fluid: Refrigerant,
): ChargeSums {
  const { labelChargeKg, canNetKg, converts } = input;
  const targetKg = converts ? input.convertedShare * labelChargeKg : labelChargeKg;
  const fullCans = Math.floor((targetKg + NO_REMAINDER_KG) / canNetKg);
  const rest = targetKg - fullCans * canNetKg;
  const remainderKg = rest > NO_REMAINDER_KG ? rest : 0;
  const line = fluid.isobar();
  line.setPressurePa(fluid.saturationPressurePa(input.ambientK));
  return {
    targetKg,
    between: converts ? [CONVERTED_SHARE.least * labelChargeKg, CONVERTED_SHARE.most * labelChargeKg] : null,
    fullCans,
    remainderKg,
    cansToHave: fullCans + (remainderKg > 0 ? 1 : 0),
    hoseLiquidKg: HOSE_M3 / line.liquidVolumeM3PerKg,
    hoseGasKg: HOSE_M3 / line.vapourVolumeM3PerKg,
  };
}
