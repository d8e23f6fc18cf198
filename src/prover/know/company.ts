/**
 * The companions of one session, by cause: what each showed at all that was seen so far, and how well that fits. Who is far
 * off is lived no further, but for the sound car, which others are compared with.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { PlantOptions } from '../../plant/buildPlant';
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { LoggedCommand } from '../../session/corePort';
import { plantOptions } from '../../session/scenario/plantOptions';
import type { GhostSpec } from '../../suspects/causes';
import type { Forecast } from '../forecast/forecastOf';
import type { Probe } from '../forecast/probe';
import { type Companion, companionOf } from './companion';
import type { Seen } from './doubtOf';
import { fitOf, WORST_READING } from './fitOf';

/** What was said and seen in a session up to a step. */
export interface SoFar {
  readonly log: readonly LoggedCommand[];
  readonly step: number;
  readonly seen: readonly Seen[];
}

export interface Member {
  readonly spec: GhostSpec;
  /** By reading, up to where it was lived. */
  readonly shows: readonly number[];
  /** As `fitOf`; minus infinity for who is lived no further. */
  readonly fit: number;
}

export interface Company {
  readonly atmospherePa: number;
  /** That have a member, in the order they came. */
  causes(): readonly string[];
  /** Lives all members on. */
  liveTo(soFar: SoFar): void;
  /** A car more, lived up to where the others are. */
  add(spec: GhostSpec): void;
  /** At least one of a cause that has any. */
  of(cause: string): readonly Member[];
  best(cause: string): Member;
  bestFit(): number;
  /** Lived by all of them. */
  steps(): number;
}

/** A car so many nats under the best is lived no further [guess]: more than one reading takes away. */
const HOPELESS = WORST_READING + 2;

export function companyIn(data: ScenarioData, seed: number, forecast: Forecast): Company {
  // what is hidden is no part of it: ghosts have their own fault, their own charge and instruments without error
  const options: PlantOptions = { ...plantOptions(data, seed), foundSealerKg: 0 };
  const atmospherePa = options.weather.pressurePa;
  const signals = [...new Set(forecast.probes.flatMap(signalsOf))];
  const companions = new WeakMap<Member, Companion>();
  const lived: Companion[] = [];
  const members = new Map<string, readonly Member[]>();
  let now: SoFar = { log: [], step: 0, seen: [] };
  const all = (): Member[] => [...members.values()].flat();
  const bestFit = (): number => Math.max(...all().map(({ fit }) => fit));
  const weighed = (companion: Companion): Member => {
    companion.liveTo(now.log, now.step);
    const shows = now.seen.map((one) => shownBy(companion, one, forecast));
    const member = { spec: companion.spec, shows, fit: fitOf(now.seen, shows, atmospherePa) };
    companions.set(member, companion);
    return member;
  };
  const livedOn = (member: Member, least: number): Member => {
    const companion = companions.get(member);
    const goesOn = member.fit > least || member.spec.cause === NOTHING_WRONG;
    return companion && goesOn ? weighed(companion) : { ...member, fit: Number.NEGATIVE_INFINITY };
  };
  return {
    atmospherePa,
    causes: () => [...members.keys()],
    liveTo(soFar) {
      now = soFar;
      const least = bestFit() - HOPELESS;
      for (const [cause, cars] of members)
        members.set(
          cause,
          cars.map((one) => livedOn(one, least)),
        );
    },
    add(spec) {
      const own = members.get(spec.cause) ?? [];
      const companion = companionOf(options, spec, signals);
      lived.push(companion);
      members.set(spec.cause, [...own, weighed(companion)]);
    },
    of: (cause) => members.get(cause) ?? [],
    best: (cause) => (members.get(cause) ?? []).reduce((best, one) => (one.fit > best.fit ? one : best)),
    bestFit,
    steps: () => lived.reduce((sum, { steps }) => sum + steps(), 0),
  };
}

/** What was taken out of the loop, and dirt, is as a forecast has it. */
const shownBy = ({ spec, shows }: Companion, read: Seen, forecast: Forecast): number =>
  read.steps.length > 0 ? shows(read) : forecast.shows(spec, read.probe);

/** A pressure is read off the set or off the charging hose, whichever is there. */
const signalsOf = ({ seen }: Probe): string[] => [seen, seen.replace('lowGauge', 'chargingGauge')];
