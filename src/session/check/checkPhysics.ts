/**
 * Physics sanity: a filling that the car could hold, and hidden faults that show. A fault shows when, five minutes into a
 * run at 1,500 rpm with the windows open, one of low side, high side, vent or clutch differs from the same car sound by
 * more than an instrument can resolve, or what an identifier on the bench would name. A small leak shows in none of them: a
 * search tells it, so the bench has to hold something to search with. The same run says whether the gauges can show what
 * there is, and whether the car has settled.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { IDENTIFIER } from '../../equipment/identifier';
import { gaugeSpecs } from '../../equipment/instruments';
import { faultOf } from '../../faults/registry';
import { buildPlant, type PlantOptions } from '../../plant/buildPlant';
import type { Command } from '../../plant/commandSpecs';
import type { Plant } from '../../plant/plantPort';
import { word } from '../../words/words';
import { STEPS_PER_MINUTE } from '../clock';
import { plantOptions } from '../scenario/plantOptions';
import { type WriteQuantity, writeMetric } from '../writeQuantity';
import type { Findings } from './findings';

const MOST_OF_LABEL = 1.6;
const RUN_MINUTES = 5;
/** Of a gauge's scale, from one minute's mean to the next [guess]: what nobody would call the same reading. */
const DRIFT = 0.02;
const SETTINGS: readonly Command[] = [
  { do: 'windows', to: 'open' },
  { do: 'blower', speed: 4 },
  { do: 'engine', rpm: 1500 },
  { do: 'ac', to: 'on' },
];
/** Signals a fault may show in, with how far apart is not the same. */
type Shows = readonly (readonly [signal: string, apart: number])[];
const ON_GAUGES: Shows = [
  ['lowSide.gaugePressurePa', 2 * gaugeSpecs.low.offsetSpread],
  ['highSide.gaugePressurePa', 2 * gaugeSpecs.high.offsetSpread],
  ['vent.temperatureK', 1],
  ['clutch.cyclesPerMin', 1],
];

export function checkPhysics(
  data: ScenarioData,
  plant: Plant,
  findings: Findings,
  write: WriteQuantity = writeMetric,
): void {
  const { contents, faults } = data;
  const options = plantOptions(data, 1);
  const labelKg = plant.value(plant.signalIndex('label.massKg'));
  const isEmpty = contents.state === 'evacuated';
  if (isEmpty && options.chargeKg > 0)
    findings.warning(['contents', 'charge'], 'SCN210', word('check.chargeOfNothing'));
  if (!isEmpty && options.chargeKg > MOST_OF_LABEL * labelKg) {
    const percent = String(Math.round((100 * options.chargeKg) / labelKg));
    findings.warning(['contents', 'charge'], 'SCN211', word('check.overfull', { percent }));
  }
  const searches = (data.bench.tools ?? []).some((tool) => SEARCH_TOOLS.includes(tool));
  const searched = faults.filter(({ fault }) => faultOf(fault).toldBy === 'search');
  // Any way out is found by searching, where there is something to search with.
  const read = options.faults.filter(({ id }) => {
    const { toldBy, links } = faultOf(id);
    return toldBy !== 'search' && !(searches && links);
  });
  const runs = isEmpty ? null : runsOf(options, read);
  if (runs && read.length > 0 && !showsIn(runs)) findings.warning(['faults'], 'SCN212', word('check.unseen'));
  if (runs) checkReadings(runs, findings, write);
  faults.forEach(({ fault, severity }, at) => {
    if (severity === 0)
      findings.warning(['faults', at, 'severity'], 'SCN215', word('check.severityNone', { id: fault }));
  });
  if (searched.length > 0 && !searches)
    findings.warning(['faults'], 'SCN214', word('check.unsearched', { id: searched[0].fault }));
}

/** Each finds a leak by itself; a lamp only where there is dye. */
const SEARCH_TOOLS: readonly string[] = ['detector', 'soap', 'uv-lamp'];

interface Runs {
  readonly signals: Shows;
  /** Of the same car sound; none where no fault is read off a gauge. */
  readonly sound: Settled | null;
  readonly faulty: Settled;
}

function runsOf(options: PlantOptions, read: PlantOptions['faults']): Runs {
  const faults = read.map((fault) => ({ ...fault, onsetStep: 0 }));
  const signals = signalsOf(options);
  const [sound, faulty] = [[], faults].map(
    (hidden) => () => settled({ ...options, faults: hidden }, signals),
  );
  return { signals, sound: read.length > 0 ? sound() : null, faulty: faulty() };
}

const showsIn = ({ signals, sound, faulty }: Runs): boolean =>
  signals.some(([, apart], at) => sound !== null && Math.abs(sound.last[at] - faulty.last[at]) > apart);

/** Both sides by their gauges: on the scale, and no longer on their way. */
function checkReadings({ signals, faulty }: Runs, findings: Findings, write: WriteQuantity): void {
  const { before, last } = faulty;
  (['low', 'high'] as const).forEach((id, at) => {
    const { minimum, maximum, offsetSpread } = gaugeSpecs[id];
    const side = word(`check.side.${id}`);
    const pressure = write({ source: signals[at][0], value: last[at], unit: 'Pa' });
    if (last[at] < minimum - offsetSpread || last[at] > maximum)
      findings.warning(['contents'], 'SCN217', word('check.offTheScale', { side, pressure }));
    const isDrifting = Math.abs(last[at] - before[at]) > DRIFT * (maximum - minimum);
    if (isDrifting) findings.warning(['contents'], 'SCN216', word('check.unsettled', { side, pressure }));
  });
}

/** A gas that does not belong in the loop shows on an identifier, where there is one. */
function signalsOf({ bench, chargeKg }: PlantOptions): Shows {
  if (!bench.tools?.includes('identifier')) return ON_GAUGES;
  return [...ON_GAUGES, ['loop.foreignKg', IDENTIFIER.threshold * chargeKg]];
}

/** Means over the last minute and the one before. */
interface Settled {
  readonly before: readonly number[];
  readonly last: readonly number[];
}

function settled(options: PlantOptions, signals: Shows): Settled {
  const plant = buildPlant(options);
  for (const command of SETTINGS) plant.apply(command);
  const indexes = signals.map(([signal]) => plant.signalIndex(signal));
  const [before, last] = [0, 1].map(() => indexes.map(() => 0));
  for (let step = 0; step < RUN_MINUTES * STEPS_PER_MINUTE; step++) {
    plant.advance();
    const minute = Math.floor(step / STEPS_PER_MINUTE);
    if (minute < RUN_MINUTES - 2) continue;
    const sums = minute === RUN_MINUTES - 1 ? last : before;
    indexes.forEach((index, at) => {
      sums[at] += plant.value(index) / STEPS_PER_MINUTE;
    });
  }
  return { before, last };
}
