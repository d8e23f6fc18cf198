/** Tools: hoses with what they couple to, service tools with their figures, instruments with range, resolution and lag. */
import { CHARGING_TANK } from '../../equipment/chargingTank';
import { hoseSpecs, hoseVolumeM3 } from '../../equipment/hoses';
import { IDENTIFIER, NAMED_GASES, shareSpec } from '../../equipment/identifier';
import type { InstrumentSpec } from '../../equipment/instrument';
import {
  airThermometerSpec,
  gaugeSpecs,
  lineThermometerSpec,
  micronGaugeSpec,
  oilBottleSpec,
  scaleSpec,
  tankScaleSpec,
} from '../../equipment/instruments';
import { DETECTOR } from '../../equipment/leakDetector';
import { LICENSED_RECOVERY } from '../../equipment/licensedRecovery';
import { NITROGEN } from '../../equipment/nitrogen';
import { OIL_INJECTOR } from '../../equipment/oilInjector';
import { RECOVERY, RECOVERY_TANK } from '../../equipment/recoveryMachine';
import { DYE_KG_PER_ML, SOAP_LEAST_M3_PER_S, SOAP_S } from '../../equipment/soapAndDye';
import { DEVICE_IDS, TOOL_IDS, type ToolId } from '../../equipment/tools';
import { VACUUM_PUMP } from '../../equipment/vacuumPump';

const instrument = (unit: string) => (spec: InstrumentSpec) => ({
  id: spec.id,
  kind: 'instrument',
  unit,
  minimum: spec.minimum,
  maximum: spec.maximum,
  resolution: spec.resolution,
  lagS: spec.lagS,
});

const FIGURES: Readonly<Partial<Record<ToolId, Readonly<Record<string, unknown>>>>> = {
  'recovery-machine': { ...RECOVERY, tank: RECOVERY_TANK },
  'vacuum-pump': VACUUM_PUMP,
  'charging-tank': CHARGING_TANK,
  nitrogen: NITROGEN,
  'oil-injector': OIL_INJECTOR,
  detector: DETECTOR,
  soap: { watchedS: SOAP_S, leastM3PerS: SOAP_LEAST_M3_PER_S },
  dye: { kgPerMl: DYE_KG_PER_ML },
  identifier: { ...IDENTIFIER, names: NAMED_GASES },
};

/** What a scenario may put on its bench as `tools`; a device goes on a hose. */
const benchTool = (id: ToolId) => ({
  id,
  kind: (DEVICE_IDS as readonly string[]).includes(id) ? 'device' : 'tool',
  ...FIGURES[id],
});

export const listTools = () => [
  { id: 'licensed-recovery', kind: 'arranged', ...LICENSED_RECOVERY },
  ...Object.values(hoseSpecs).map((spec) => ({
    id: spec.id,
    kind: 'hose',
    coupler: spec.coupler,
    gauge: spec.gauge,
    takesCan: spec.takesCan,
    lengthM: spec.lengthM,
    volumeM3: hoseVolumeM3(spec),
  })),
  ...TOOL_IDS.map(benchTool),
  ...Object.values(gaugeSpecs).map(instrument('Pa')),
  instrument('Pa')(micronGaugeSpec),
  ...[airThermometerSpec, lineThermometerSpec].map(instrument('K')),
  ...[scaleSpec, tankScaleSpec('recovery-scale'), tankScaleSpec('charging-scale')].map(instrument('kg')),
  instrument('m3')(oilBottleSpec),
  instrument('1')(shareSpec('identifier-share')),
];
