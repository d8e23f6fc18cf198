/** A vacuum gauge while the pump draws, then with the valves shut: tight and dry, leaking, and wet. */
import type { HiddenFault } from '../../../plant/buildPlant';
import { PA_PER_MICRON } from '../../../units/pressure';
import { word } from '../../../words/words';
import type { ReportInputs } from '../inputs';
import type { ReportSection } from '../page';
import { type Point, plot } from '../plot';
import { give, serviceCar, trace } from '../serviceCar';

const GAUGE = 'micronGauge.absolutePressurePa';
const PUMPED_S = 600;
const HELD_S = 1500;
const EVERY_S = 10;
const LEAST_MICRON = 1;

const CASES: readonly (readonly [word: 'tight' | 'leaking' | 'wet', faults: readonly HiddenFault[]])[] = [
  ['tight', []],
  ['leaking', [{ id: 'leak', severity: 0.02, onsetStep: 0 }]],
  ['wet', [{ id: 'moisture', severity: 0.5, onsetStep: 0 }]],
];

/** On the first shipped car: the vacuum is the same story on every one. */
export function evacuating({ vehicles, printed }: ReportInputs): ReportSection {
  const { water } = printed.evacuation;
  const lines = CASES.map(([name, faults]) => ({
    name: word(`report.evacuating.${name}`),
    points: microns(vehicles[0].id, water.degC, faults),
  }));
  return {
    id: 'evacuating',
    title: word('report.evacuating.title'),
    about: word('report.evacuating.about'),
    source: word('report.source', { source: water.source }),
    figures: [
      plot({
        title: word('report.evacuating.gauge'),
        x: word('report.axis.minutes'),
        y: word('report.axis.micron'),
        lines,
        limits: [{ name: word('report.evacuating.boils'), y: water.boils_at_micron }],
      }),
    ],
  };
}

function microns(vehicleId: string, ambientC: number, faults: readonly HiddenFault[]): readonly Point[] {
  const plant = serviceCar(vehicleId, ambientC, 'vacuum-pump', { start: 'evacuated', chargeKg: 0, faults });
  const inMicron = (pa: number): number => Math.max(LEAST_MICRON, pa / PA_PER_MICRON);
  const pumped = trace(plant, GAUGE, PUMPED_S, EVERY_S, inMicron);
  give(plant, { do: 'manifold', side: 'low', turn: 0 }, { do: 'manifold', side: 'high', turn: 0 });
  const from = pumped.at(-1)?.[0] ?? 0;
  const held = trace(plant, GAUGE, HELD_S, EVERY_S, inMicron);
  // an open gauge stands over its range at first
  return [...pumped, ...held.map(([minutes, value]): Point => [from + minutes, value])].filter(
    ([, value]) => value < 1.2e5,
  );
}
