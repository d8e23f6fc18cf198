/** Every bent sign there is, with its reason; told in DEVELOPERS.md too. */
import { bentOnHatchback } from './bentOnHatchback';
import { bentOnLaterCars } from './bentOnLaterCars';
import { bentOnSedan } from './bentOnSedan';
import type { BentSign } from './bentSign';

export const bentSigns: readonly BentSign[] = [
  ...bentOnHatchback.map((bent) => ({ ...bent, vehicle: 'hatchback' })),
  ...bentOnSedan.map((bent) => ({ ...bent, vehicle: 'sedan' })),
  ...bentOnLaterCars,
];
