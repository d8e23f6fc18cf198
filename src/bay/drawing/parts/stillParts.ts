/**
 * Which drawing belongs to which kind of part, for everything that stands still. A new kind is one file and one line
 * here; what moves (fans, clutch hubs) is listed in ../livePieces.ts.
 */
import type { Part } from '../../../layout/layout';
import type { Drawing } from '../record';
import { accumulator } from './accumulator';
import { blowerHousing, filterLid, plugBox } from './airParts';
import { battery } from './battery';
import { beltFront } from './beltFront';
import { beltSide } from './beltSide';
import { booster } from './booster';
import { tank, washer } from './bottles';
import { airbox, fusebox } from './boxes';
import { compressorElectric } from './compressorElectric';
import { compressorFront } from './compressorFront';
import { compressorSide } from './compressorSide';
import { condenser } from './condenser';
import { drier } from './drier';
import { drierSlim } from './drierSlim';
import { driveUnit } from './driveUnit';
import { engineAcross } from './engineAcross';
import { engineAlong } from './engineAlong';
import { engineThree } from './engineThree';
import { evaporatorCase } from './evaporatorCase';
import { fanBeltShroud } from './fanBeltShroud';
import { fanShroud } from './fanElectric';
import { block, flange, grommet, orifice, pressureSwitch } from './fittings';
import { lineFilter, muffler, sightBlock, switchBlock, union } from './inLine';
import { inverter } from './inverter';
import { junctionBox, servicePlug } from './junctionBox';
import { radiator } from './radiator';
import { rearUnit } from './rearUnit';
import { alternator, dipstick, oilfilter, starter } from './small';
import { strut } from './strut';
import { txv } from './txv';

const drawings: Readonly<Record<string, (part: Part) => Drawing>> = {
  accumulator,
  airbox,
  alternator,
  battery,
  'belt-front': beltFront,
  'belt-side': beltSide,
  block,
  'blower-housing': blowerHousing,
  booster,
  'clutch-front': () => [],
  'compressor-electric': compressorElectric,
  'compressor-front': compressorFront,
  'compressor-side': compressorSide,
  condenser,
  dipstick,
  drier,
  'drier-slim': drierSlim,
  'drive-unit': driveUnit,
  'engine-across': engineAcross,
  'engine-along': engineAlong,
  'engine-three': engineThree,
  'evaporator-case': evaporatorCase,
  'fan-belt': fanBeltShroud,
  'fan-electric': fanShroud,
  'filter-lid': filterLid,
  flange,
  fusebox,
  grommet,
  inverter,
  'junction-box': junctionBox,
  label: () => [],
  'line-filter': lineFilter,
  muffler,
  oilfilter,
  orifice,
  'plug-box': plugBox,
  radiator,
  'rear-unit': rearUnit,
  'service-plug': servicePlug,
  'sight-block': sightBlock,
  starter,
  strut,
  switch: pressureSwitch,
  'switch-block': switchBlock,
  tank,
  txv,
  // drawn with the part it sits in
  undrawn: () => [],
  union,
  washer,
};

/** The still drawing of a part. Throws `RangeError` for a kind that nobody can draw. */
export function stillPart(part: Part): Drawing {
  const draw = drawings[part.kind];
  if (!draw) throw new RangeError(`part "${part.id}": nobody can draw a "${part.kind}"`);
  return draw(part);
}
