/** The engine speed of the service information's test, to the step that the command `engine` takes; 0 of a car without one. */
import { vehicleOf } from '../loop/car/vehicles';

const STEP_RPM = 50;
const S_PER_MIN = 60;

/** Throws `RangeError` for an unknown vehicle. */
export const serviceRpm = (vehicleId: string): number =>
  STEP_RPM * Math.round((S_PER_MIN * vehicleOf(vehicleId).service.engine) / STEP_RPM);
