/** Refrigerant left in the loop while a recovery machine draws on it, warm and cold. */
import { word } from '../../../words/words';
import type { ReportInputs } from '../inputs';
import type { ReportSection } from '../page';
import { plot } from '../plot';
import { serviceCar, trace } from '../serviceCar';

const WARM_C = 22;
const COLD_C = 5;
const DURATION_S = 1800;
const EVERY_S = 15;
const PERCENT = 100;

/** On the shipped cars, by id. */
export function recovering({ vehicles, printed }: ReportInputs): ReportSection {
  const { source, least_share_recovered } = printed.recovery;
  const lines = vehicles.flatMap(({ id, label }) =>
    [WARM_C, COLD_C].map((ambientC) => ({
      name: word('report.recovering.at', { name: id, ambient: String(ambientC) }),
      points: trace(
        serviceCar(id, ambientC, 'recovery-machine'),
        'loop.massKg',
        DURATION_S,
        EVERY_S,
        (kg) => (PERCENT * kg) / label.charge,
      ),
    })),
  );
  return {
    id: 'recovering',
    title: word('report.recovering.title'),
    about: word('report.recovering.about'),
    source: word('report.source', { source }),
    figures: [
      plot({
        title: word('report.recovering.left'),
        x: word('report.axis.minutes'),
        y: word('report.axis.chargePercent'),
        lines,
        limits: [{ name: word('report.recovering.limit'), y: PERCENT * (1 - least_share_recovered) }],
      }),
    ],
  };
}
