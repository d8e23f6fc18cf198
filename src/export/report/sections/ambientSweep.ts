/** Pressures and vents against the weather, beside the bands that service texts print. */
import { runLoop } from '../../../plant/runLoop';
import { word } from '../../../words/words';
import { celsius, kPa, type ReportInputs, standing } from '../inputs';
import type { ReportSection } from '../page';
import { plot } from '../plot';

export function ambientSweep({ vehicles, printed }: ReportInputs): ReportSection {
  const { rows, source, low_ceiling_kPa_gauge, low_floor_expansion_valve_kPa_gauge } =
    printed.bands.stationary;
  const runs = vehicles.map((vehicle) => ({
    name: vehicle.id,
    results: rows.map(
      ([ambientC, relativeHumidity]) =>
        [ambientC, runLoop(standing(vehicle, ambientC, { relativeHumidity }))] as const,
    ),
  }));
  const axis = { x: word('report.axis.outsideC') };
  return {
    id: 'weather',
    title: word('report.weather.title'),
    about: word('report.weather.about'),
    source: word('report.source', { source }),
    figures: [
      plot({
        ...axis,
        title: word('report.weather.high'),
        y: word('report.axis.gaugeKPa'),
        lines: runs.map(({ name, results }) => ({
          name,
          points: results.map(([at, { highSideGaugePa }]) => [at, kPa(highSideGaugePa.mean)] as const),
        })),
        bands: [
          {
            name: word('report.printedBand'),
            points: rows.map(([at, , from, to]) => [at, from, to] as const),
          },
        ],
      }),
      plot({
        ...axis,
        title: word('report.weather.low'),
        y: word('report.axis.gaugeKPa'),
        lines: runs.map(({ name, results }) => ({
          name,
          points: results.map(([at, { lowSideGaugePa }]) => [at, kPa(lowSideGaugePa.mean)] as const),
        })),
        limits: [
          { name: word('report.weather.lowLimits'), y: low_ceiling_kPa_gauge },
          { name: word('report.weather.lowLimits'), y: low_floor_expansion_valve_kPa_gauge },
        ],
      }),
      plot({
        ...axis,
        title: word('report.weather.vent'),
        y: word('report.axis.degC'),
        lines: runs.map(({ name, results }) => ({
          name,
          points: results.map(([at, { ventK }]) => [at, celsius(ventK)] as const),
        })),
      }),
    ],
  };
}
