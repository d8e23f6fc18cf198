/** Reckons a car card off the page's own thread: it runs a car for ten minutes. */
import { type CardFigures, cardFigures, fluidsFor } from '../export/card/cardFigures';
import type { CardInputs } from '../export/card/cardInputs';
import { loadVehicle, vehicleIds } from '../loop/car/vehicles';
import { loadRefrigerant } from '../refrigerant/fluids';

export interface CardRequest {
  readonly number: number;
  readonly inputs: CardInputs;
}

export interface CardAnswer {
  readonly number: number;
  readonly figures?: CardFigures;
  readonly failed?: string;
}

async function answer({ number, inputs }: CardRequest): Promise<CardAnswer> {
  try {
    await Promise.all(vehicleIds.map(loadVehicle));
    await Promise.all(fluidsFor(inputs).map(loadRefrigerant));
    return { number, figures: cardFigures(inputs) };
  } catch (error) {
    return { number, failed: String(error) };
  }
}

self.onmessage = async ({ data }: MessageEvent<CardRequest>) => self.postMessage(await answer(data));
