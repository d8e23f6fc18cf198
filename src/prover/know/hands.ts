/** Doing a test at the text twin: what is said, and the values that come of it. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { folded } from '../forecast/folded';
import type { Probe } from '../forecast/probe';
import type { Stage } from '../forecast/stages';
import type { Seen } from './doubtOf';
import type { Film, Seat } from './seat';
import type { Test } from './testsOf';

export interface Hands {
  /** Puts the car through a stage, watching whatever can be watched in it. */
  enter(stage: Stage): void;
  /** What was seen; nothing of a probe that could not be read. */
  take(test: Test): readonly Seen[];
  /** Whether the charge is out, so that nothing more can be read. */
  isOver(): boolean;
}

const VENT = 'centre-vent';
const AIR = 'airThermometer.temperatureK';
const CLAMP_SETTLES = 'run 20 s';
const AIR_SETTLES = 'run 30 s';
/** A thermometer is watched so long before it is read, for it comes and goes with a clutch that cycles. */
const WATCH_S = 30;
const WATCHED: ReadonlySet<Probe['tool']> = new Set(['eyes', 'charging-hose', 'gauge-set']);

type Read = Omit<Seen, 'probe'>;

export function handsOf(seat: Seat, probes: readonly Probe[], { hoses }: ScenarioData['bench']): Hands {
  const hasSet = hoses.includes('gauge-set');
  const seenOf = ({ seen, tool }: Probe): string =>
    tool === 'charging-hose' && !hasSet ? seen.replace('lowGauge', 'chargingGauge') : seen;
  let film: Film = [];
  let now: Stage | null = null;
  let airAt: string | null = null;
  let isStopped = false;
  let isEmpty = false;

  const stop = (): void => {
    if (isStopped) return;
    isStopped = true;
    if (now?.id !== 'rest') for (const line of ['ac off', 'engine 0', 'run 3 min']) seat.say(line);
  };
  const watched = (probe: Probe, stage: Stage): Read => {
    const from = probe.fromS ?? stage.seconds - stage.watchedS;
    return readIn(film.slice(from), seenOf(probe), probe.fold);
  };
  const say = (probe: Probe): void => {
    const { channel } = probe;
    if (channel === 'low-gauge') seat.say(`note-reading ${hasSet ? 'low-gauge' : 'charging-gauge'}`);
    else if (channel === 'high-gauge') seat.say('note-reading high-gauge');
    else if (probe.tool === 'eyes') {
      const part = partIn(channel);
      if (seat.sitting.core.choices('part').includes(part)) seat.say(`look ${part}`);
    }
  };
  const middleOf = (channel: string, signal: string): Read => {
    const seconds = seat.watch(WATCH_S, [signal]);
    seat.say(`note-reading ${channel}`);
    return readIn(seconds, signal, 'mean');
  };
  const onPipe = (place: string): Read => {
    seat.say(`probe-line ${place}`);
    seat.say(CLAMP_SETTLES);
    return middleOf('line', 'lineThermometer.temperatureK');
  };
  /** A probe that was there all along has been watched already. */
  const inAir = (probe: Probe, place: string): Read => {
    if (airAt === place && now) {
      seat.say('note-reading air');
      return watched(probe, now);
    }
    seat.say(`probe-air ${place}`);
    seat.say(AIR_SETTLES);
    airAt = place;
    return middleOf('air', probe.seen);
  };
  /** Before anything else, so that the car is at rest and no hose is on. */
  const sample = (gases: readonly Probe[]): readonly Seen[] => {
    if (seat.lowPort === undefined) return [];
    for (const line of [`cap ${seat.lowPort} off`, `identify ${seat.lowPort}`, 'run 77 s']) seat.say(line);
    const seen = gases.map((probe) => {
      seat.say(`note-reading ${probe.channel}`);
      return { probe, value: seat.sees(probe.seen), signal: probe.seen, steps: [] };
    });
    seat.say(`cap ${seat.lowPort} on`);
    return seen;
  };
  const weigh = (probe: Probe): number => {
    stop();
    isEmpty = true;
    seat.say('attach recovery-machine utility');
    seat.say('note-reading recovery-scale');
    const before = seat.sees(probe.seen);
    for (const side of ['low', 'high']) seat.say(`manifold ${side} 16`);
    for (const wait of ['run 8 min', 'run 4 min', 'run 4 min']) {
      seat.say('run recovery-machine on');
      seat.say(wait);
    }
    seat.say('note-reading recovery-scale');
    return seat.sees(probe.seen) - before;
  };
  const read = (probe: Probe): Read => {
    if (probe.tool === 'recovery-machine') return { value: weigh(probe), signal: probe.seen, steps: [] };
    if (probe.tool === 'thermometer') {
      const place = probe.place ?? VENT;
      return probe.channel.startsWith('line') ? onPipe(place) : inAir(probe, place);
    }
    say(probe);
    if (probe.tool === 'eyes' && probe.stage === 'rest')
      return { value: folded(probe.fold, [seat.sees(probe.seen)]), signal: probe.seen, steps: [] };
    return now ? watched(probe, now) : { value: Number.NaN, signal: probe.seen, steps: [] };
  };
  return {
    enter(stage) {
      if (stage.id !== 'rest' && airAt !== VENT) {
        seat.say(`probe-air ${VENT}`);
        airAt = VENT;
      }
      now = stage;
      isStopped = false;
      const signals = [...probes.filter(({ tool }) => WATCHED.has(tool)).map(seenOf), AIR];
      film = seat.film(stage, [...new Set(signals)]);
    },
    take({ probes: [first, ...more] }) {
      const seen =
        first.tool === 'identifier' ? sample([first, ...more]) : [{ probe: first, ...read(first) }];
      return seen.filter(({ value }) => !Number.isNaN(value));
    },
    isOver: () => isEmpty,
  };
}

const readIn = (film: Film, signal: string, fold: Probe['fold']): Read => ({
  value: folded(
    fold,
    film.map(({ saw }) => saw.get(signal) ?? Number.NaN),
  ),
  signal,
  steps: film.map(({ step }) => step),
});

/** `fan.fan2.speedRatio` and `dirt.condenser` name a part; so do the glass and the clutch. */
function partIn(channel: string): string {
  const [first, second] = channel.split('.');
  if (first === 'fan' || first === 'dirt') return second;
  return first === 'sightGlass' ? 'drier' : first;
}
