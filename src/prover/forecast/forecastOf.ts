/**
 * What each ghost of an ensemble would show at each test, lived when somebody asks. What was lived is kept for whoever asks
 * next of the same car in the same weather; steps are counted as if it were not, so that they are the same whoever came
 * first.
 */
import { faultOf } from '../../faults/registry';
import type { PlantOptions } from '../../plant/buildPlant';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { canonicalJson } from '../../session/canonicalJson';
import { STEPS_PER_SECOND } from '../../session/clock';
import type { GhostSpec } from '../../suspects/causes';
import { buildGhost } from '../../suspects/ghost';
import { type Life, lifeOf } from './lifeOf';
import type { Probe } from './probe';
import { probesOf } from './probesOf';
import { SAMPLE_S, sampleOf } from './sampleOf';
import { secondsOf } from './secondsOf';
import { type Stage, stagesOf } from './stages';

export interface Forecast {
  readonly stages: readonly Stage[];
  readonly probes: readonly Probe[];
  shows(spec: GhostSpec, probe: Probe): number;
  /** Of what it shows, and to be asked after that: only then is it the same whoever lived it before. */
  wanders(spec: GhostSpec, probe: Probe): number;
  /** Steps of plants that the answers given so far take; `but` those, which somebody else counts. */
  steps(but?: readonly GhostSpec[]): number;
}

interface Kept {
  readonly lives: Map<string, Life>;
  readonly samples: Map<string, readonly number[]>;
}

const MOST_KEPT = 2;
const kept = new Map<string, Kept>();
const SOUND: GhostSpec = { cause: NOTHING_WRONG, severity: 0 };

/** `options` as `ghostOptions` makes them. */
export function forecastOf(options: PlantOptions): Forecast {
  const { lives, samples } = keptFor(options);
  const stages = stagesOf(options.vehicleId);
  const probes = probesOf(
    buildGhost(options, SOUND),
    stages.map(({ id }) => id),
  );
  const lived = probes.filter(({ tool }) => tool !== 'identifier');
  const asked = new Map<string, { readonly spec: GhostSpec; readonly stage: number }>();
  const sampled = new Set<string>();
  return {
    stages,
    probes,
    shows(spec, probe) {
      if (probe.tool === 'identifier') {
        const own = hasContents(spec) ? spec : SOUND;
        const key = canonicalJson(own);
        sampled.add(key);
        const shares = keptIn(samples, key, () => sampleOf(options, own));
        return shares[Number(probe.truth.slice('sample:'.length))];
      }
      const key = canonicalJson(spec);
      const stage = stages.findIndex(({ id }) => id === probe.stage);
      if (stage > (asked.get(key)?.stage ?? -1)) asked.set(key, { spec, stage });
      return keptIn(lives, key, () => lifeOf(options, spec, stages, lived)).shows(probe);
    },
    wanders: (spec, probe) => lives.get(canonicalJson(spec))?.wanders(probe) ?? 0,
    steps(but = []) {
      const others = new Set(but.map(canonicalJson));
      const seconds = [...asked]
        .filter(([key]) => !others.has(key))
        .reduce(
          (sum, [, { spec, stage }]) =>
            stages.slice(0, stage + 1).reduce((upTo, one) => upTo + secondsOf(one, spec), sum),
          0,
        );
      const samples = [...sampled].filter((key) => !others.has(key)).length;
      return STEPS_PER_SECOND * (seconds + SAMPLE_S * samples);
    },
  };
}

/** Whether anything but its own charge is in its loop. */
function hasContents({ cause, severity, both }: GhostSpec): boolean {
  if (cause === NOTHING_WRONG) return false;
  return (both ?? [{ cause, severity }]).some((one) => faultOf(one.cause).contents !== undefined);
}

function keptIn<T>(map: Map<string, T>, key: string, make: () => T): T {
  const found = map.get(key) ?? make();
  map.set(key, found);
  return found;
}

function keptFor(options: PlantOptions): Kept {
  const key = canonicalJson(options);
  const found = kept.get(key) ?? { lives: new Map(), samples: new Map() };
  kept.delete(key);
  kept.set(key, found);
  for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old);
  return found;
}
