/**
 * What the car would show if it were sound, here and now: the healthy ghost stepped along with a session, one plant. Give
 * it every command and every step that the session's own plant gets.
 *
 * The brackets are wide on purpose, 15 % of the gauge pressure either way as printed service bands are, and come for both
 * sides: from about 70 to 130 % of the charge the needle stays inside, so inside does not mean full. Not for an assessed
 * session: it is the same model that hides the fault.
 */
import type { PlantOptions } from '../plant/buildPlant';
import type { Command } from '../plant/commandSpecs';
import { NOTHING_WRONG } from '../plant/faultBook';
import type { PlantSnapshot } from '../plant/plantPort';
import { buildGhost } from './ghost';

const BRACKET = 0.15;

export interface ExpectedSide {
  readonly gaugePa: number;
  readonly fromGaugePa: number;
  readonly toGaugePa: number;
}

export interface ExpectedWindow {
  readonly low: ExpectedSide;
  readonly high: ExpectedSide;
  readonly ventK: number;
}

export interface HealthyGhost {
  readonly step: number;
  perform(command: Command): void;
  advance(): void;
  window(): ExpectedWindow;
  /** Absolute pressure and enthalpy of the state points 1 to 4, Pa and J/kg in turn. */
  statePoints(): readonly number[];
  /** For going back with the session. */
  snapshot(): PlantSnapshot;
  restore(snapshot: PlantSnapshot): void;
}

export function healthyGhost(options: PlantOptions): HealthyGhost {
  const { plant, perform } = buildGhost(options, { cause: NOTHING_WRONG, severity: 0 });
  const low = plant.signalIndex('lowSide.gaugePressurePa');
  const high = plant.signalIndex('highSide.gaugePressurePa');
  const vent = plant.signalIndex('vent.temperatureK');
  const points = [1, 2, 3, 4].flatMap((point) =>
    ['pressurePa', 'enthalpyJPerKg'].map((quantity) => plant.signalIndex(`point${point}.${quantity}`)),
  );
  return {
    get step() {
      return plant.step;
    },
    perform,
    advance: () => void plant.advance(),
    window: () => expectedWindow(plant.value(low), plant.value(high), plant.value(vent)),
    statePoints: () => points.map((index) => plant.value(index)),
    snapshot: () => plant.snapshot(),
    restore: (snapshot) => plant.restore(snapshot),
  };
}

/** Gauge pressures in Pa, K; a vacuum has its brackets the right way round too. */
export function expectedWindow(lowGaugePa: number, highGaugePa: number, ventK: number): ExpectedWindow {
  return { low: side(lowGaugePa), high: side(highGaugePa), ventK };
}

function side(gaugePa: number): ExpectedSide {
  const reach = BRACKET * Math.abs(gaugePa);
  return { gaugePa, fromGaugePa: gaugePa - reach, toGaugePa: gaugePa + reach };
}
