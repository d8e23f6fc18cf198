/** Tools: hoses with what they couple to, instruments with range, resolution and lag in their SI unit. */
import { hoseSpecs, hoseVolumeM3 } from '../../equipment/hoses';
import type { InstrumentSpec } from '../../equipment/instrument';
import { airThermometerSpec, gaugeSpecs, lineThermometerSpec, scaleSpec } from '../../equipment/instruments';

const instrument = (unit: string) => (spec: InstrumentSpec) => ({
  id: spec.id,
  kind: 'instrument',
  unit,
  minimum: spec.minimum,
  maximum: spec.maximum,
  resolution: spec.resolution,
  lagS: spec.lagS,
});

export const listTools = () => [
  ...Object.values(hoseSpecs).map((spec) => ({
    id: spec.id,
    kind: 'hose',
    coupler: spec.coupler,
    gauge: spec.gauge,
    takesCan: spec.takesCan,
    lengthM: spec.lengthM,
    volumeM3: hoseVolumeM3(spec),
  })),
  ...Object.values(gaugeSpecs).map(instrument('Pa')),
  ...[airThermometerSpec, lineThermometerSpec].map(instrument('K')),
  instrument('kg')(scaleSpec),
];
