/** Everything on a car card that is reckoned. The refrigerant's tables, and those of the car's bulb, have to be loaded. */
import { refrigerantsOf } from '../../loop/car/refrigerantsOf';
import { refrigerant } from '../../refrigerant/fluids';
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import { type CardInputs, filledWith } from './cardInputs';
import { type ChargeSums, chargeSums } from './chargeSums';
import { carOfKind, type WeatherWindows, weatherWindows } from './weatherWindows';

export interface CardFigures {
  readonly sums: ChargeSums;
  readonly weather: WeatherWindows;
}

export function cardFigures(inputs: CardInputs): CardFigures {
  const fluid = refrigerant(filledWith(inputs));
  return { sums: chargeSums(inputs, fluid), weather: weatherWindows(inputs, fluid) };
}

/** Whose tables `cardFigures` reads. */
export const fluidsFor = (inputs: CardInputs): readonly RefrigerantId[] =>
  refrigerantsOf(carOfKind(inputs, filledWith(inputs)), filledWith(inputs));
