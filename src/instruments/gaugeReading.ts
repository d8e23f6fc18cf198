/**
 * What a pressure gauge shows, in words and numbers: the state of the needle, the number under it, the same pressure in
 * the other unit and what it means as a boiling temperature. Pure; face, ladder, text twin and speech say the same.
 */
import { word } from '../words/words';
import {
  ATMOSPHERE_PA,
  type DisplayUnits,
  inWords,
  paPerUnit,
  plainNumber,
  writePressure,
  writeTemperature,
} from './displayUnits';
import { type FaceKind, fullScalePa, gaugeAngleDeg } from './gaugeScale';
import { type SaturationLine, saturationTemperatureK } from './saturation';

export type GaugeState = 'off' | 'live' | 'loose' | 'hose-only' | 'vacuum' | 'under' | 'over';

export interface GaugeReading {
  readonly state: GaugeState;
  /** Gauge pressure in Pa; NaN when off. */
  readonly gaugePressurePa: number;
  readonly number: string;
  readonly unit: string;
  /** One line under the face. */
  readonly meaning: string;
  /** The first part of `meaning` that narrow places leave out; empty where there is none. */
  readonly other: string;
  /** The rest of it. */
  readonly short: string;
  /** The whole reading as a sentence for speech. */
  readonly spoken: string;
}

/** A high gauge has no scale below zero: at it the needle rests on its stop, and it may be a vacuum (Pa). */
const UNDER_PA = 0;
const VACUUM_PA = -2_000;
/** A loose gauge farther from zero than this holds pressure in its hose; nearer, it wants zeroing (Pa). */
const ZEROING_PA = 40_000;

/** How the hose stands to the car: off every port, on one with its coupler shut, or open to it. */
export type Coupling = 'loose' | 'shut' | 'open';

function stateOf(face: FaceKind, gaugePressurePa: number, coupling: Coupling): GaugeState {
  if (Number.isNaN(gaugePressurePa)) return 'off';
  if (gaugePressurePa >= fullScalePa[face]) return 'over';
  if (coupling === 'loose') return 'loose';
  if (coupling === 'shut') return 'hose-only';
  if (face === 'high' && gaugePressurePa <= UNDER_PA) return 'under';
  return face === 'low' && gaugePressurePa < VACUUM_PA ? 'vacuum' : 'live';
}

function otherUnit(gaugePressurePa: number, units: DisplayUnits, face: FaceKind): string {
  return inWords(writePressure(gaugePressurePa, units.pressure === 'kPa' ? 'psi' : 'kPa', face));
}

/** With no car behind it a needle says nothing of a boiling point; beside zero it wants zeroing. */
function looseMeaning(pa: number, face: FaceKind, units: DisplayUnits): string {
  const beside = Math.abs(pa) < ZEROING_PA && writePressure(pa, units.pressure, face).number !== '0';
  return beside ? word('instrument.notZeroed') : word('instrument.loose');
}

/** The same pressure in the other unit, and what it means; either may be empty. */
function meaningOf(
  state: GaugeState,
  pa: number,
  face: FaceKind,
  units: DisplayUnits,
  line: SaturationLine | null,
): readonly [other: string, short: string] {
  if (state === 'off') return ['', word('instrument.notCoupled')];
  if (state === 'over') return ['', word('instrument.onStop')];
  if (state === 'loose') return ['', looseMeaning(pa, face, units)];
  if (state === 'under') return ['', word('instrument.belowScale')];
  if (state === 'hose-only') return ['', word('instrument.couplerShut')];
  if (state === 'vacuum') return ['', otherUnit(pa, { ...units, pressure: 'psi' }, face)];
  const boilsK = line ? saturationTemperatureK(line, pa + ATMOSPHERE_PA) : Number.NaN;
  const other = otherUnit(pa, units, face);
  if (Number.isNaN(boilsK)) return ['', other];
  const temperature = inWords(writeTemperature(boilsK, units.temperature));
  return [
    other,
    face === 'high'
      ? word('instrument.condenses', { temperature })
      : word('instrument.boils', { temperature }),
  ];
}

/** The last round number of the scale, for "more than". */
function lastNumeral(face: FaceKind, units: DisplayUnits): number {
  const end = fullScalePa[face] / paPerUnit[units.pressure];
  return units.pressure === 'psi' ? Math.floor(end / 10) * 10 : end;
}

export function readGauge(
  face: FaceKind,
  gaugePressurePa: number,
  units: DisplayUnits,
  line: SaturationLine | null,
  coupling: Coupling = 'open',
): GaugeReading {
  const state = stateOf(face, gaugePressurePa, coupling);
  const written = writePressure(state === 'under' ? 0 : gaugePressurePa, units.pressure, face);
  const end = plainNumber(lastNumeral(face, units));
  const number =
    state === 'off'
      ? word('instrument.nothing')
      : state === 'under'
        ? word('instrument.under', { number: written.number })
        : state === 'over'
          ? word('instrument.over', { number: end })
          : written.number;
  const unit = state === 'off' || state === 'over' ? units.pressure : written.unit;
  const [other, short] = meaningOf(state, gaugePressurePa, face, units, line);
  const meaning = other === '' ? short : word('instrument.other', { reading: other, meaning: short });
  const reading = `${number} ${unit}`;
  const spoken = state === 'off' ? meaning : word('instrument.spoken', { reading, meaning });
  return { state, gaugePressurePa, number, unit, meaning, other, short, spoken };
}

/** Angle of the needle; null when there is none, as there is nothing to read (NaN). */
export function needleAngleDeg(face: FaceKind, gaugePressurePa: number): number | null {
  return Number.isNaN(gaugePressurePa) ? null : gaugeAngleDeg(face, gaugePressurePa);
}
