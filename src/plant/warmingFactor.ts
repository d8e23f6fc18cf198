/**
 * kg of carbon dioxide that warm as much in a hundred years as one kg of a refrigerant (GWP100). R-134a 1,430 and R-12
 * 10,900: IPCC, fourth assessment report (2007), table 2.14, which the rules of several countries count by; the fifth has
 * 1,300, the sixth 1,530 for R-134a. R-1234yf 4: as EU regulation 517/2014 counts it; later reports say under 1.
 * Hydrocarbon blend 3: propane and isobutane in the same regulation. From memory but for R-134a's, which is printed by a
 * state pollution agency.
 */
import type { ForeignId } from '../loop/foreign';

const FACTORS: Readonly<Record<ForeignId, number>> = {
  'R-134a': 1430,
  'R-12': 10_900,
  'R-1234yf': 4,
  hydrocarbon: 3,
};

export const warmingFactor = (fluid: ForeignId): number => FACTORS[fluid];
