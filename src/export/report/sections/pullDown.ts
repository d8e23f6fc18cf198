/** A car that stood in the sun with everything shut, started: both sides and the vent, second by second. */
import type { Car } from '../../../loop/car/car';
import { readCar } from '../../../loop/car/carReadings';
import { runLoop } from '../../../plant/runLoop';
import { word } from '../../../words/words';
import { celsius, kPa, type ReportInputs, standing } from '../inputs';
import type { ReportSection } from '../page';
import { type Point, plot } from '../plot';

const AMBIENT_C = 35;
const DURATION_S = 900;
const EVERY_S = 5;
const SUN_W = 900;

export function pullDown({ vehicles }: ReportInputs): ReportSection {
  const traces = vehicles.map((vehicle) => {
    const high: Point[] = [];
    const low: Point[] = [];
    const vent: Point[] = [];
    const note = (car: Car, second: number): void => {
      if (second % EVERY_S !== 0) return;
      const { highSideGaugePa, lowSideGaugePa, ventK } = readCar(car);
      high.push([second, kPa(highSideGaugePa)]);
      low.push([second, kPa(lowSideGaugePa)]);
      vent.push([second, celsius(ventK)]);
    };
    const hot = { start: 'soaked', cabin: 'closed', sunW: SUN_W, durationS: DURATION_S } as const;
    runLoop(standing(vehicle, AMBIENT_C, hot), note);
    return { name: vehicle.id, high, low, vent };
  });
  const x = word('report.axis.seconds');
  return {
    id: 'pull-down',
    title: word('report.pullDown.title'),
    about: word('report.pullDown.about'),
    source: word('report.pullDown.source'),
    figures: [
      plot({
        title: word('report.pullDown.pressures'),
        x,
        y: word('report.axis.gaugeKPa'),
        lines: traces.flatMap(({ name, high, low }) => [
          { name: word('report.highOf', { name }), points: high },
          { name: word('report.lowOf', { name }), points: low },
        ]),
      }),
      plot({
        title: word('report.pullDown.vent'),
        x,
        y: word('report.axis.degC'),
        lines: traces.map(({ name, vent }) => ({ name, points: vent })),
      }),
    ],
  };
}
