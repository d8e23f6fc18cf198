/**
 * A sign that trade texts print and the model does not show on one car: its row in the table of signs, and why. Nobody is
 * scored on it. `bentSigns.ts` lists them all; a test holds those of hatchback and sedan to the model.
 */
export interface BentSign {
  readonly vehicle: string;
  readonly fault: string;
  readonly row: string;
  readonly channel: string;
  /** Weathers in which it is bent, degC. */
  readonly ambientsC: readonly number[];
  /** Bent only at the worse severity, which is not counted. */
  readonly only?: 'worst';
  readonly reason: string;
}
