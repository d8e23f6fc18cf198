/**
 * The test of the service information with everything written down: at rest, then turning, windows open, blower full. Of a
 * lesson that does not ask for that test three minutes will do: long enough for needles to settle.
 */
import { vehicleOf } from '../../loop/car/vehicles';
import { serviceRpm } from '../../plant/serviceRpm';
import type { TidyHands } from './tidyHands';
import { waysOf } from './ways';

const SETTLED_S = 180;
const AT_REST_S = 30;
const LONGER = 1.02;

/** Starts the car as the test has it. */
export function startTest({ give, scenario: { data } }: TidyHands): void {
  const { evaporatorAir } = vehicleOf(data.vehicle);
  const rpm = serviceRpm(data.vehicle);
  give('windows open', `blower ${evaporatorAir.steps.length - 1}`, 'air recirculated', 'temperature coldest');
  give(...(rpm > 0 ? [`engine ${rpm}`] : []), 'ac on');
}

export function testAsPrinted(hands: TidyHands, charges: boolean): void {
  const { give, wait, sees, scenario } = hands;
  const { lowChannel } = waysOf(scenario, charges);
  const gauges = [`note-reading ${lowChannel}`, 'note-reading high-gauge'];
  give('probe-air outside');
  wait(AT_REST_S);
  give('note-reading air', ...gauges);
  give('probe-air centre-vent');
  startTest(hands);
  wait(asksForTest(hands) ? LONGER * vehicleOf(scenario.data.vehicle).service.minutes : SETTLED_S);
  give(`note-clutch ${sees('clutch.turning') === 1 ? 'turning' : 'standing'}`, 'note-reading air', ...gauges);
}

const asksForTest = ({ scenario: { rules, data } }: TidyHands): boolean =>
  JSON.stringify([rules, data.deliver]).includes('test.heldRatio');
