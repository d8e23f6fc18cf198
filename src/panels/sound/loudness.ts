/** How loud a noise is, 0..1, by what makes it. Each rises with its cause and never falls [guess]. */

const between = (least: number, most: number, share: number): number =>
  share > 0 ? least + (most - least) * Math.min(1, share) : 0;

const LOUDEST_RPM = 4000;
const MOST_STEP = 4;

export const engineLoudness = (rpm: number): number => between(0.3, 0.9, rpm / LOUDEST_RPM);
export const blowerLoudness = (step: number): number => between(0.1, 0.7, step / MOST_STEP);
export const fanLoudness = (speedRatio: number): number => between(0.1, 0.5, speedRatio);
/** Of gas that passes or escapes: by the root of its share, as an ear tells it. */
export const hissLoudness = (ratio: number): number => between(0.15, 0.9, Math.sqrt(Math.max(0, ratio)));

const FIRINGS_A_TURN = 2;
/** A four-stroke engine with four cylinders fires twice a turn. */
export const enginePitchHz = (rpm: number): number => (FIRINGS_A_TURN * rpm) / 60;
