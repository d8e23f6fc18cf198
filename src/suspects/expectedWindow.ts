/**
 * What the car would show if it were sound, here and now: the healthy ghost stepped along with a session, one plant. Give
 * it every command and every step that the session's own plant gets.
 *
 * The brackets are wide on purpose, 15 % of the gauge pressure either way as printed service bands are, and come for both
 * sides: from about 70 to 130 % of the charge the needle stays inside, so inside does not mean full. Not for an assessed
 * session: it is the same model that hides the fault.
 *
 * It holds for a car with its charge. Where the commands have undone the ghost's loop or taken its charge out, a healthy
 * car tells nothing: there is no window, and its numbers are NaN.
 */
import { vehicleOf } from '../loop/car/vehicles';
import type { PlantOptions } from '../plant/buildPlant';
import type { Command } from '../plant/commandSpecs';
import { dueWith } from '../plant/due';
import { NOTHING_WRONG } from '../plant/faultBook';
import type { PlantSnapshot } from '../plant/plantPort';
import type { SignalSpec } from '../plant/signalTypes';
import { buildGhost } from './ghost';

const BRACKET = 0.15;
/** Less than this in a sound loop is a loop being emptied: under what a car at 0 °C stands at by far [guess]. */
const LEAST_GAUGE_PA = 50_000;
/** Share of the label's charge that a sound loop holds while hoses have some of it [guess]. */
const LEAST_SHARE = 0.75;
const INSIDE = /^point\d\.|^vessel\..*\.liquidRatio$/;
const NO_SIDE: ExpectedSide = { gaugePa: Number.NaN, fromGaugePa: Number.NaN, toGaugePa: Number.NaN };
const NO_WINDOW: ExpectedWindow = { low: NO_SIDE, high: NO_SIDE, ventK: Number.NaN };

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
  /** All NaN while a healthy car tells nothing. */
  window(): ExpectedWindow;
  /** What of its inside see-inside draws: state points, and how much of each stretch and cell is liquid. */
  readonly insideSpecs: readonly SignalSpec[];
  /** Their values in the same order; NaN with the window. */
  inside(): readonly number[];
  /** For going back with the session. */
  snapshot(): PlantSnapshot;
  restore(snapshot: PlantSnapshot): void;
}

export function healthyGhost(options: PlantOptions): HealthyGhost {
  const { plant, perform } = buildGhost(options, { cause: NOTHING_WRONG, severity: 0 });
  const low = plant.signalIndex('lowSide.gaugePressurePa');
  const high = plant.signalIndex('highSide.gaugePressurePa');
  const vent = plant.signalIndex('vent.temperatureK');
  const mass = plant.signalIndex('loop.massKg');
  const opened = plant.signalIndex('loop.openedCount');
  const leastKg = LEAST_SHARE * dueWith(vehicleOf(options.vehicleId), options.refrigerant).chargeKg;
  const tells = (): boolean =>
    plant.value(opened) === 0 &&
    plant.value(mass) >= leastKg &&
    Math.min(plant.value(low), plant.value(high)) >= LEAST_GAUGE_PA;
  const insideSpecs = plant.signals.filter(({ id }) => INSIDE.test(id));
  const inside = insideSpecs.map(({ id }) => plant.signalIndex(id));
  return {
    get step() {
      return plant.step;
    },
    perform,
    advance: () => void plant.advance(),
    window: () =>
      tells() ? expectedWindow(plant.value(low), plant.value(high), plant.value(vent)) : NO_WINDOW,
    insideSpecs,
    inside() {
      const told = tells();
      return inside.map((index) => (told ? plant.value(index) : Number.NaN));
    },
    snapshot: () => plant.snapshot(),
    restore: (snapshot) => plant.restore(snapshot),
  };
}

/** Gauge pressures in Pa, K. */
export function expectedWindow(lowGaugePa: number, highGaugePa: number, ventK: number): ExpectedWindow {
  return { low: side(lowGaugePa), high: side(highGaugePa), ventK };
}

function side(gaugePa: number): ExpectedSide {
  const reach = BRACKET * gaugePa;
  return { gaugePa, fromGaugePa: gaugePa - reach, toGaugePa: gaugePa + reach };
}
