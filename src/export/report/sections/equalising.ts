/** The engine stopped after ten minutes: how the two sides come together, quickly by a tube, slowly by a valve. */
import type { Car } from '../../../loop/car/car';
import { readCar } from '../../../loop/car/carReadings';
import { runLoop } from '../../../plant/runLoop';
import { word } from '../../../words/words';
import { kPa, type ReportInputs, standing } from '../inputs';
import type { ReportSection } from '../page';
import { type Point, plot } from '../plot';

const AMBIENT_C = 32;
const RUNS_S = 600;
const STANDS_S = 1200;
const EVERY_S = 4;

export function equalising({ vehicles }: ReportInputs): ReportSection {
  const traces = vehicles.map((vehicle) => {
    const high: Point[] = [];
    const low: Point[] = [];
    const note = (car: Car, second: number): void => {
      if (second === RUNS_S) car.set({ engineRevPerS: 0, airConditioningOn: false, blowerStep: 0 });
      if (second < RUNS_S || second % EVERY_S !== 0) return;
      const { highSideGaugePa, lowSideGaugePa } = readCar(car);
      high.push([second - RUNS_S, kPa(highSideGaugePa)]);
      low.push([second - RUNS_S, kPa(lowSideGaugePa)]);
    };
    runLoop(standing(vehicle, AMBIENT_C, { durationS: RUNS_S + STANDS_S }), note);
    return { name: vehicle.id, high, low };
  });
  return {
    id: 'equalising',
    title: word('report.equalising.title'),
    about: word('report.equalising.about'),
    source: word('report.equalising.source'),
    figures: [
      plot({
        title: word('report.equalising.pressures'),
        x: word('report.axis.secondsStopped'),
        y: word('report.axis.gaugeKPa'),
        lines: traces.flatMap(({ name, high, low }) => [
          { name: word('report.highOf', { name }), points: high },
          { name: word('report.lowOf', { name }), points: low },
        ]),
      }),
    ],
  };
}
