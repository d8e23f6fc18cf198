/** Flow through the orifice tube against an independent evaluation of the published correlation, point by point. */
import { createInlet } from '../../../loop/meteringInlet';
import { orificeTubeFlow } from '../../../loop/orificeTube';
import { refrigerant } from '../../../refrigerant/fluids';
import type { RefrigerantId } from '../../../refrigerant/refrigerant';
import { word } from '../../../words/words';
import type { ReportInputs } from '../inputs';
import type { ReportSection } from '../page';
import { type Point, plot } from '../plot';

const EVAPORATOR_K = 278.15;
const ZERO_C = 273.15;
const KILO = 1000;

export function orificeFlow({ printed }: ReportInputs): ReportSection {
  const { rows, source } = printed.orificeFlow;
  const points = rows.map(([fluid, bore, length, condensing, subcooling, grams]): [string, Point] => {
    const found = flow(
      fluid as RefrigerantId,
      Number(bore),
      Number(length),
      Number(condensing),
      Number(subcooling),
    );
    return [String(fluid), [Number(grams), found]];
  });
  const fluids = [...new Set(points.map(([fluid]) => fluid))];
  const most = Math.max(...points.map(([, [x]]) => x));
  return {
    id: 'orifice',
    title: word('report.orifice.title'),
    about: word('report.orifice.about'),
    source: word('report.source', { source }),
    figures: [
      plot({
        title: word('report.orifice.title'),
        x: word('report.axis.publishedGramsPerS'),
        y: word('report.axis.modelGramsPerS'),
        lines: [
          {
            name: word('report.orifice.equal'),
            points: [
              [0, 0],
              [most, most],
            ],
          },
          {
            name: word('report.orifice.more'),
            points: [
              [0, 0],
              [most, 1.1 * most],
            ],
          },
          {
            name: word('report.orifice.less'),
            points: [
              [0, 0],
              [most, 0.9 * most],
            ],
          },
        ],
        marks: fluids.map((name) => ({
          name,
          points: points.filter(([fluid]) => fluid === name).map(([, p]) => p),
        })),
      }),
    ],
  };
}

/** g/s. */
function flow(
  id: RefrigerantId,
  boreMm: number,
  lengthMm: number,
  condensingC: number,
  subcoolingK: number,
): number {
  const fluid = refrigerant(id);
  const condensingK = condensingC + ZERO_C;
  const iso = fluid.isobar();
  const inlet = createInlet();
  inlet.pressurePa = fluid.saturationPressurePa(condensingK);
  iso.setPressurePa(inlet.pressurePa);
  inlet.downstreamPa = fluid.saturationPressurePa(EVAPORATOR_K);
  inlet.saturationPa = fluid.saturationPressurePa(condensingK - subcoolingK);
  inlet.subcoolingK = subcoolingK;
  inlet.quality = 0;
  inlet.liquidM3PerKg = iso.liquidVolumeM3PerKg;
  inlet.vapourM3PerKg = iso.vapourVolumeM3PerKg;
  inlet.volumeM3PerKg = iso.liquidVolumeM3PerKg;
  const { criticalPressurePa, criticalTemperatureK } = fluid;
  return (
    KILO * orificeTubeFlow(boreMm / KILO, lengthMm / KILO, 1, inlet, criticalPressurePa, criticalTemperatureK)
  );
}
