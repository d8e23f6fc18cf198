/** What a share of the label's charge does: the plateau between two knees, and where a trade study found them. */
import { type LoopResult, runLoop } from '../../../plant/runLoop';
import { word } from '../../../words/words';
import { kPa, type ReportInputs, standing } from '../inputs';
import type { ReportSection } from '../page';
import { type Point, plot } from '../plot';

const SHARES = [20, 30, 40, 50, 60, 65, 70, 75, 80, 90, 100, 110, 115, 120, 125, 130, 140, 160] as const;
const AMBIENT_C = 32;
const PERCENT = 100;

export function chargeSweep({ vehicles, printed }: ReportInputs): ReportSection {
  const { source, knees } = printed.chargeStudy;
  const runs = vehicles.map((vehicle) => ({
    name: vehicle.id,
    results: SHARES.map(
      (share) => [share, runLoop(standing(vehicle, AMBIENT_C, { chargeShare: share / PERCENT }))] as const,
    ),
  }));
  const sweep = (title: string, y: string, of: (result: LoopResult) => number): string => {
    const lines = runs.map(({ name, results }) => ({
      name,
      points: results.map(([at, result]): Point => [at, of(result)]),
    }));
    const values = lines.flatMap(({ points }) => points.map(([, value]) => value));
    const low = Math.min(...values);
    const high = Math.max(...values);
    const band = (share: readonly number[]): (readonly [number, number, number])[] =>
      share.map((at) => [PERCENT * at, low, high] as const);
    return plot({
      title,
      y,
      x: word('report.axis.chargePercent'),
      lines,
      bands: [
        { name: word('report.charge.lowerKnee'), points: band(knees.lower_share_of_charge) },
        { name: word('report.charge.upperKnee'), points: band(knees.upper_share_of_charge) },
      ],
    });
  };
  return {
    id: 'charge',
    title: word('report.charge.title'),
    about: word('report.charge.about'),
    source: word('report.source', { source }),
    figures: [
      sweep(word('report.charge.high'), word('report.axis.gaugeKPa'), (r) => kPa(r.highSideGaugePa.mean)),
      sweep(word('report.charge.low'), word('report.axis.gaugeKPa'), (r) => kPa(r.lowSideGaugePa.mean)),
      sweep(word('report.charge.capacity'), word('report.axis.watt'), (r) => r.capacityW),
      sweep(word('report.charge.superheat'), word('report.axis.kelvin'), (r) => r.superheatK),
      sweep(word('report.charge.subcooling'), word('report.axis.kelvin'), (r) => r.subcoolingK),
      sweep(word('report.charge.cycling'), word('report.axis.perMinute'), (r) => r.cyclesPerMin),
    ],
  };
}
