/** A line of CSV each simulated second: what gauges and thermometers would be near to, and the mass in every vessel. */
import type { Car } from '../../loop/car/car';
import { readCar } from '../../loop/car/carReadings';
import { wearOf } from '../../loop/car/compressorWear';
import type { EachSecond } from '../../plant/runLoop';

export interface LoopTrace {
  readonly eachSecond: EachSecond;
  csv(): string;
}

const COLUMNS = [
  'time_s',
  'highSideGauge_Pa',
  'lowSideGauge_Pa',
  'vent_K',
  'cabin_K',
  'superheat_K',
  'subcooling_K',
  'clutch',
  'compressor_revPerS',
  'discharge_K',
  'wear',
] as const;

export function traceLoop(): LoopTrace {
  const rows: string[] = [];
  return {
    eachSecond(car, second) {
      if (rows.length === 0) rows.push([...COLUMNS, ...masses(car).map(({ name }) => name)].join(','));
      rows.push([second, ...values(car), ...masses(car).map(({ kg }) => kg)].join(','));
    },
    csv: () => `${rows.join('\n')}\n`,
  };
}

function values(car: Car): number[] {
  const now = readCar(car);
  return [
    now.highSideGaugePa,
    now.lowSideGaugePa,
    now.ventK,
    car.number('cabinK'),
    now.superheatK,
    now.subcoolingK,
    car.number('clutchIn'),
    car.number('compressorRevPerS'),
    now.dischargeK,
    wearOf(car.network.reserve),
  ];
}

/** Refrigerant in each vessel (the low side's oil included), what went to the air, and their sum. */
function masses({ network }: Car): { name: string; kg: number }[] {
  const inVessels = network.structure().vessels.map(({ slot, spec }) => ({
    name: `${spec.id}_kg`,
    kg: network.massKg(slot, 'refrigerant'),
  }));
  const vented = network.ventedKg('refrigerant');
  const sum = inVessels.reduce((total, { kg }) => total + kg, vented);
  return [...inVessels, { name: 'vented_kg', kg: vented }, { name: 'sum_kg', kg: sum }];
}
