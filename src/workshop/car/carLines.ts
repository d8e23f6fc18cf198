/** What a trainee will see of the running car, in sentences: both needles, the vents, the compressor, and in which weather. */
import {
  type DisplayUnits,
  inWords,
  plainNumber,
  writeClock,
  writePressure,
  writeTemperature,
} from '../../instruments/displayUnits';
import { expectedWindow } from '../../suspects/expectedWindow';
import { parseQuantity } from '../../units/quantity';
import { word } from '../../words/words';
import type { CarReading, Swing } from './carRun';
import type { CarsAt } from './carStory';
import type { CarPicture } from './runningCar';

/** Nearer than this a person reads the same off a dial: share of the reading, and Pa for a small one [guess]. */
const SAME_SHARE = 0.06;
const SAME_PA = 12_000;
const SAME_K = 1.5;
/** A needle that goes up and down by more than this share of its mean swings [guess]. */
const SWINGS_SHARE = 0.2;
const SAME_CYCLES = 0.7;
const SAME_TURNING = 0.1;
/** Slower than this against its pulley a hub slips for all to see [guess]. */
const SLIPS_BELOW = 0.95;
const PERCENT = 100;

export function carLines({ data, own, sound }: CarPicture, units: DisplayUnits): string[] {
  const onsets = data.faults.flatMap(({ onset }) =>
    onset === undefined ? [] : parseQuantity(onset, 'time'),
  );
  const later = Math.min(...onsets);
  return [
    sideLine('high', own.reading.high, sound.reading.high, units),
    sideLine('low', own.reading.low, sound.reading.low, units),
    ventLine(own.reading.ventK, sound.reading.ventK, units),
    clutchLine(own.reading, sound.reading),
    ...(later > 0 && later < Number.POSITIVE_INFINITY
      ? [word('workshopCar.says.later', { time: writeClock(later) })]
      : []),
  ];
}

const swings = ({ meanPa, leastPa, mostPa }: Swing): boolean =>
  mostPa - leastPa > Math.max(2 * SAME_PA, SWINGS_SHARE * Math.abs(meanPa));

function sideLine(face: 'low' | 'high', own: Swing, sound: Swing, units: DisplayUnits): string {
  const written = (pa: number): string => inWords(writePressure(pa, units.pressure, face));
  const side = face === 'low' ? word('workshopCar.gauge.low') : word('workshopCar.gauge.high');
  const given = { side, value: written(own.meanPa), sound: written(sound.meanPa) };
  const ends = { least: written(own.leastPa), most: written(own.mostPa) };
  if (swings(own) && swings(sound)) {
    const soundEnds = { soundLeast: written(sound.leastPa), soundMost: written(sound.mostPa) };
    return word('workshopCar.says.bothSwing', { side, ...ends, ...soundEnds });
  }
  if (swings(own)) return word('workshopCar.says.swings', { side, ...ends, sound: given.sound });
  const apart = Math.abs(own.meanPa - sound.meanPa);
  const isSame = apart <= Math.max(SAME_PA, SAME_SHARE * Math.abs(sound.meanPa));
  return isSame
    ? word('workshopCar.says.same', { side, value: given.value })
    : word('workshopCar.says.other', given);
}

function ventLine(ownK: number, soundK: number, units: DisplayUnits): string {
  const written = (kelvin: number): string => inWords(writeTemperature(kelvin, units.temperature));
  return Math.abs(ownK - soundK) <= SAME_K
    ? word('workshopCar.says.ventSame', { value: written(ownK) })
    : word('workshopCar.says.ventOther', { value: written(ownK), sound: written(soundK) });
}

function clutchLine(own: CarReading, sound: CarReading): string {
  const isSame =
    Math.abs(own.cyclesPerMin - sound.cyclesPerMin) < SAME_CYCLES &&
    Math.abs(own.turningShare - sound.turningShare) < SAME_TURNING &&
    slips(own) === slips(sound);
  return isSame
    ? word('workshopCar.says.clutchSame', { does: compressorDoes(own) })
    : word('workshopCar.says.clutchOther', { does: compressorDoes(own), sound: compressorDoes(sound) });
}

const slips = ({ hubSpeedRatio }: CarReading): boolean => hubSpeedRatio < SLIPS_BELOW;

function compressorDoes(reading: CarReading): string {
  const turns = turnsHow(reading);
  if (!slips(reading)) return turns;
  return word('workshopCar.says.slips', { turns, share: plainNumber(PERCENT * reading.hubSpeedRatio) });
}

function turnsHow({ cyclesPerMin, turningShare }: CarReading): string {
  if (turningShare === 0) return word('workshopCar.says.never');
  if (cyclesPerMin > 0) return word('workshopCar.says.cycles', { times: plainNumber(cyclesPerMin, 1) });
  if (turningShare > 1 - 1 / PERCENT) return word('workshopCar.says.always');
  return word('workshopCar.says.part', { share: plainNumber(PERCENT * turningShare) });
}

/** Whether a needle of this car stands outside what a sound car's brackets hold. */
export function isOutside({ own, sound }: CarsAt): boolean {
  const { low, high } = expectedWindow(sound.low.meanPa, sound.high.meanPa, sound.ventK);
  return (
    own.low.meanPa < low.fromGaugePa ||
    own.low.meanPa > low.toGaugePa ||
    own.high.meanPa < high.fromGaugePa ||
    own.high.meanPa > high.toGaugePa
  );
}

/** In which of the weathers looked at the gauges tell this car from a sound one. */
export function bandLine(band: readonly CarsAt[], units: DisplayUnits): string {
  const written = (kelvin: number): string => inWords(writeTemperature(kelvin, units.temperature));
  const ends = { from: written(band[0].ambientK), to: written(band[band.length - 1].ambientK) };
  const spans = outsideSpans(band);
  if (spans.length === 0) return word('workshopCar.band.never', ends);
  if (spans.length === 1 && spans[0].length === band.length) return word('workshopCar.band.always', ends);
  const where = spans.map((span) => {
    const [from, to] = [written(span[0].ambientK), written(span[span.length - 1].ambientK)];
    return from === to ? from : word('workshopCar.band.span', { from, to });
  });
  return word('workshopCar.band.some', { where: where.join(', ') });
}

/** Neighbours that stand outside, together. */
function outsideSpans(band: readonly CarsAt[]): CarsAt[][] {
  const spans: CarsAt[][] = [];
  band.forEach((at, i) => {
    if (!isOutside(at)) return;
    if (i > 0 && isOutside(band[i - 1])) spans[spans.length - 1].push(at);
    else spans.push([at]);
  });
  return spans;
}
