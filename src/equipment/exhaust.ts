/**
 * Carbon monoxide from an engine, and the limits it is held against.
 *
 * 71 g/h at idle is a fleet mean of light petrol vehicles (EPA 420-F-08-025, from memory), with a catalyst; five times as much
 * without a working one, which a car before 1990 is taken to be [guess]. With speed it goes as the air through the engine.
 * Limits: 35 ppm over a working day, 200 ppm never over, 1,200 ppm at once dangerous to life (NIOSH pocket guide).
 */
const IDLE_KG_PER_S = 0.071 / 3600;
const IDLE_RPM = 800;
const CATALYST_FROM_YEAR = 1990;
const WITHOUT_CATALYST = 5;
/** Of the exhaust, what still blows into the place while its door stands open behind the car [guess]. */
export const OPEN_DOOR_SHARE = 0.5;
/** Carbon monoxide at 25 °C and one atmosphere. */
export const CO_KG_PER_M3 = 1.145;

export const CO_LIMITS_PPM = [35, 200, 1200] as const;

/** kg/s of carbon monoxide out of the tailpipe. */
export function exhaustCoKgPerS(year: number, rpm: number): number {
  return (IDLE_KG_PER_S * (year < CATALYST_FROM_YEAR ? WITHOUT_CATALYST : 1) * rpm) / IDLE_RPM;
}
