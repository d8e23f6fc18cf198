/** What the page is told of a session tried otherwise. */
import type { DebriefDomain } from '../panels/debriefModel';
import type { WhatIfEnd, WhatIfTold } from '../panels/whatIfModel';
import type { WhatIf, WhatIfRun } from '../scoring/whatIf';
import { indexOfSignal } from '../session/record/record';

/** What is so already needs no doing, and nothing is lost by it. */
const SO_ALREADY = 'refusal.already';

export function whatIfTold({ before, after, firstDifferentStep, refused }: WhatIf): WhatIfTold {
  const changed = before.score.findings.flatMap((old, at) => {
    const now = after.score.findings[at];
    return old.status === now.status && old.earned === now.earned ? [] : [{ before: old, after: now }];
  });
  return {
    before: endOf(before),
    after: endOf(after),
    changed,
    refused: refused.filter(({ reason }) => reason !== SO_ALREADY),
    firstDifferentStep,
    sameState: before.stateHash === after.stateHash,
  };
}

function endOf({ score, record, lastStep }: WhatIfRun): WhatIfEnd {
  const start = record.values.length - record.signals.length;
  const last = (id: string): number => record.values[start + indexOfSignal(record, id)];
  return {
    reported: score.reported,
    passed: score.passed,
    domains: Object.entries(score.domains).map(
      ([id, { earned, possible }]): DebriefDomain => ({ id, earned, possible }),
    ),
    lastStep,
    chargeKg: last('loop.massKg'),
    highPa: last('highSide.gaugePressurePa'),
    lowPa: last('lowSide.gaugePressurePa'),
    ventK: last('vent.temperatureK'),
    sluggedKg: last('compressor.sluggedKg'),
    ventedKg: last('vented.kg'),
  };
}
