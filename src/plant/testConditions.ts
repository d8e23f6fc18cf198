/**
 * Whether engine, blower, windows, air and temperature stand as the service information asks for its figures: its engine
 * speed to 100 rpm, windows open, blower full, air recirculated, temperature coldest, cooling on.
 */
import type { PlantParts } from './assemblePlant';
import { STEP_S } from './stepTime';
import { TALLY } from './tally';

type Parts = Pick<PlantParts, 'car' | 'desk' | 'tally'>;

const SPEED_RPM = 100;
const SECONDS_PER_MINUTE = 60;

function isSoNow({ car, desk }: Parts): boolean {
  const { service, evaporatorAir } = car.vehicle;
  const askedRpm = SECONDS_PER_MINUTE * service.engine;
  return (
    Math.abs(desk.engineRpm - askedRpm) <= SPEED_RPM &&
    desk.acOn &&
    desk.windowsOpen &&
    desk.recirculated &&
    desk.blower === evaporatorAir.steps.length - 1 &&
    desk.tasks.temperature === 'coldest'
  );
}

/** After every command: since when. */
export function noteTestConditions(parts: Parts): void {
  const { tasks } = parts.desk;
  if (!isSoNow(parts)) tasks.testSince = null;
  else tasks.testSince ??= parts.tally[TALLY.step];
}

/** How long it has been so, over how long the service information waits. */
export function testedShare({ car, desk, tally }: Parts): number {
  const since = desk.tasks.testSince;
  return since === null ? 0 : ((tally[TALLY.step] - since) * STEP_S) / car.vehicle.service.minutes;
}
