/** See-inside in sentences: what each point is, and what the whole shows. Worked out from the state, not written per fault. */
import { plainNumber } from '../instruments/displayUnits';
import type { StatePoint } from '../instruments/phGeometry';
import { qualityAt, type SaturationLine, saturationTemperatureK } from '../instruments/saturation';
import { word } from '../words/words';
import type { SessionModel } from './sessionModel';

const PERCENT = 100;
/** Less vapour than this in the liquid is none to speak of. */
const SEEN = 0.005;
/** Less than this in the loop is none to speak of [guess]. */
const EMPTY_KG = 0.005;
/** Pressures nearer than this are one on a gauge [guess]; 2 psi. */
const EVEN_PA = 13_800;

function restingWords(session: SessionModel): string {
  if (session.signal('loop.massKg') < EMPTY_KG) return word('inside.says.empty');
  const apartPa = session.signal('highSide.gaugePressurePa') - session.signal('lowSide.gaugePressurePa');
  return word(Math.abs(apartPa) < EVEN_PA ? 'inside.says.even' : 'inside.says.resting');
}

export function phaseWords(line: SaturationLine, point: StatePoint): string {
  const quality = qualityAt(line, point.pressurePa, point.enthalpyJPerKg);
  const boilsK = saturationTemperatureK(line, point.pressurePa);
  // under the foot of the line, near a vacuum, nothing is left to boil
  if (point.pressurePa < line.pressurePa[0]) return word('inside.phase.vapour');
  if (Number.isNaN(quality)) return '';
  if (quality >= 1)
    return word('inside.phase.superheated', { kelvin: plainNumber(point.temperatureK - boilsK) });
  if (quality <= 0)
    return word('inside.phase.subcooled', { kelvin: plainNumber(boilsK - point.temperatureK) });
  if (quality > 1 - SEEN) return word('inside.phase.vapour');
  if (quality < SEEN) return word('inside.phase.liquid');
  return word('inside.phase.mixture', { share: plainNumber(quality * PERCENT) });
}

export function insideSentences(
  session: SessionModel,
  line: SaturationLine,
  points: readonly StatePoint[],
): string[] {
  const flows = session.signal('compressor.massFlowKgPerS');
  if (!(flows > 1e-4)) return [restingWords(session)];
  const [inlet, , condensed] = points;
  const before = qualityAt(line, condensed.pressurePa, condensed.enthalpyJPerKg);
  const after = qualityAt(line, inlet.pressurePa, inlet.enthalpyJPerKg);
  const said: string[] = [];
  if (before > SEEN) said.push(word('inside.says.bubbles', { share: plainNumber(before * PERCENT) }));
  else
    said.push(
      word('inside.says.fullLiquid', {
        kelvin: plainNumber(saturationTemperatureK(line, condensed.pressurePa) - condensed.temperatureK),
      }),
    );
  if (Math.abs(after - 1) < SEEN) said.push(word('inside.says.just'));
  else if (after >= 1)
    said.push(
      word('inside.says.dry', {
        kelvin: plainNumber(inlet.temperatureK - saturationTemperatureK(line, inlet.pressurePa)),
      }),
    );
  else said.push(word('inside.says.wet', { share: plainNumber((1 - after) * PERCENT) }));
  return said;
}
