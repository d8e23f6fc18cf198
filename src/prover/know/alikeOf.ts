/**
 * What is hidden and what is claimed as a pair, where nothing on the bench tells the one car from the other: which of the two
 * it is then is no fault of who asked. Null where something does.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { layoutOf } from '../../layout/layouts';
import { placesOf } from '../../layout/placesOf';
import type { GhostSpec } from '../../suspects/causes';
import { pairBetween } from '../apart/pairBetween';
import { rowOf } from '../apart/rowOf';
import { testsAt } from '../apart/testsAt';
import type { Pair } from '../apartTable';
import type { Forecast } from '../forecast/forecastOf';

export function alikeOf(
  hidden: GhostSpec,
  claimed: GhostSpec,
  forecast: Forecast,
  { vehicle, bench }: ScenarioData,
  atmospherePa: number,
): Pair | null {
  const { probes } = forecast;
  const tried = { probes, tests: testsAt(forecast, bench), known: placesOf(layoutOf(vehicle)), atmospherePa };
  const [own, other] = [hidden, claimed].map((spec) => rowOf(spec, forecast, probes));
  return pairBetween(tried, [own], [other]);
}
