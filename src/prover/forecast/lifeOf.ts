/**
 * One ghost put through the stages, as far as somebody asks, and what each test would show of it. It is looked at each
 * second; pressures, pipes and air are the car's own, without lag.
 */
import { CLAMP_AIR_SHARE } from '../../equipment/instruments';
import type { PlantOptions } from '../../plant/buildPlant';
import { placeWallK } from '../../plant/linePlaces';
import { STEPS_PER_SECOND } from '../../session/clock';
import type { GhostSpec } from '../../suspects/causes';
import { buildGhost, type Ghost } from '../../suspects/ghost';
import { folded } from './folded';
import type { Probe } from './probe';
import { secondsOf } from './secondsOf';
import type { Stage, StageId } from './stages';

export interface Life {
  /** What a test would show; NaN where there is nothing to read. */
  shows(probe: Probe): number;
  /** How far a thermometer went while it was watched, K: what is read a little later may be so far off. */
  wanders(probe: Probe): number;
}

type Read = (ghost: Ghost) => number;

/** `probes` without a sample: those need a plant of their own. */
export function lifeOf(
  options: PlantOptions,
  spec: GhostSpec,
  stages: readonly Stage[],
  probes: readonly Probe[],
): Life {
  let ghost: Ghost | null = null;
  let lived = 0;
  const values = new Map<string, number>();
  const ways = new Map<string, number>();
  const live = (stage: Stage): void => {
    ghost ??= buildGhost(options, spec);
    for (const command of stage.commands) ghost.perform(command);
    const read = probes
      .filter((probe) => probe.stage === stage.id)
      .map((probe) => ({ probe, of: readerOf(probe), samples: [] as number[] }));
    const start = ghost.plant.step;
    const seconds = secondsOf(stage, spec);
    for (let second = 1; second <= seconds; second++) {
      ghost.runTo(start + second * STEPS_PER_SECOND);
      for (const { probe, of, samples } of read) {
        const from = probe.fromS ?? seconds - stage.watchedS;
        if (second > from) samples.push(of(ghost));
      }
    }
    for (const { probe, samples } of read) {
      values.set(probe.id, folded(probe.fold, samples));
      if (probe.tool === 'thermometer') ways.set(probe.id, folded('swing', samples));
    }
  };
  const liveTo = (id: StageId): void => {
    const until = stages.findIndex((stage) => stage.id === id);
    while (lived <= until) live(stages[lived++]);
    if (lived === stages.length) ghost = null;
  };
  return {
    shows(probe) {
      if (!values.has(probe.id)) liveTo(probe.stage);
      return values.get(probe.id) ?? Number.NaN;
    },
    wanders: (probe) => ways.get(probe.id) ?? 0,
  };
}

function readerOf({ truth }: Probe): Read {
  if (truth.startsWith('line:')) {
    const place = truth.slice('line:'.length);
    return ({ parts: { car } }) =>
      (1 - CLAMP_AIR_SHARE) * placeWallK(car, place) + CLAMP_AIR_SHARE * car.number('bayK');
  }
  if (truth === 'air:coil-outlet') return ({ parts }) => parts.car.number('coilOutletK');
  if (truth === 'leaks') return ({ plant }) => plant.value(plant.signalIndex('loop.leaking'));
  const signal = truth === 'held' ? 'loop.massKg' : truth;
  let index = -1;
  return ({ plant }) => {
    if (index < 0) index = plant.signalIndex(signal);
    return plant.value(index);
  };
}
