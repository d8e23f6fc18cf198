/**
 * Where the refrigerant went that is in the air now: the flow of every link to the room, summed by cause. A link's id says
 * which. What the books hold over these sums went some other way.
 */

import { ROOM } from '../loop/networkTypes';
import type { PlantParts } from './assemblePlant';
import { STEP_S } from './stepTime';
import { VENT_CAUSES, type VentCause, ventedAt } from './tally';
import { ventedKg } from './ventedKg';
import { warmingFactor } from './warmingFactor';

const CAUSE_OF: Readonly<Record<string, VentCause>> = {
  leak: 'leak',
  open: 'opened',
  purge: 'purge',
  end: 'spray',
  relief: 'relief',
  sample: 'sample',
  device: 'spray',
};

type Sources = Pick<PlantParts, 'car' | 'tally' | 'foreign'>;

interface WayOut {
  readonly link: number;
  readonly cause: VentCause;
  /** -1 where the room is where the link comes from. */
  readonly sign: 1 | -1;
}

export interface VentBook {
  /** After every step: what went out in it. */
  keep(): void;
  kgBy(cause: VentCause): number;
  /** kg of carbon dioxide that warm as much as all that was vented. */
  co2Kg(): number;
}

export function openVentBook({ car, tally, foreign }: Sources): VentBook {
  const { network } = car;
  let slots: readonly number[] | null = null;
  let ways: readonly WayOut[] = [];
  const named = VENT_CAUSES.filter((cause) => cause !== 'other');

  return {
    keep() {
      if (network.linkSlots() !== slots) {
        slots = network.linkSlots();
        ways = waysOut(car.network);
      }
      for (const { link, cause, sign } of ways) {
        tally[ventedAt(cause)] += sign * network.massFlowKgPerS(link) * STEP_S;
      }
    },
    kgBy(cause) {
      if (cause !== 'other') return tally[ventedAt(cause)];
      return ventedKg(network) - named.reduce((sum, one) => sum + tally[ventedAt(one)], 0);
    },
    co2Kg() {
      const own = network.ventedKg('refrigerant') * warmingFactor(network.refrigerantId);
      return foreign ? own + network.ventedKg('foreign') * warmingFactor(foreign) : own;
    },
  };
}

function waysOut(network: PlantParts['car']['network']): WayOut[] {
  return network.structure().links.flatMap(({ slot, spec }): WayOut[] => {
    if (spec.from.vessel !== ROOM && spec.to.vessel !== ROOM) return [];
    const cause = spec.kind === 'pump' ? 'pump' : (CAUSE_OF[spec.id.split(':')[0]] ?? 'other');
    return [{ link: slot, cause, sign: spec.to.vessel === ROOM ? 1 : -1 }];
  });
}
