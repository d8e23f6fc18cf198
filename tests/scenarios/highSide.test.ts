/** A can opened to the high side: critical at that instant, whatever the number, and never before. */
import { describe, expect, it } from 'vitest';
import { openSession } from '../../src/session/openSession';
import { playPlan } from '../../src/session/plan/playPlan';
import { scenarioById } from '../../src/session/scenario/library';
import { played } from '../support/plans';

const scenario = scenarioById('warm-at-the-lights');
const before = [
  ...['begin', 'wear goggles', 'wear gloves', 'door open', 'cap port-b off'],
  ...['couple gauge-high port-b corner-front,fender,mat', 'tap can-1 utility', 'can-valve can-1 4'],
  ...['coupler gauge-high open', 'run-on 10 s'],
];

describe('a can on the gauge set', () => {
  it('is no fault while the hand valve of the high side is shut', () => {
    const { score } = played(scenario, [...before, 'finish']);
    expect(score.critical).toEqual([]);
  });

  it('is critical in the very step in which that valve is opened, engine off', () => {
    const { score, record } = played(scenario, [...before, 'manifold high 1', 'finish']);
    const finding = score.findings.find(({ rule }) => rule === 'canOnHigh');
    expect(score.critical).toEqual(['canOnHigh']);
    expect(score.reported).toBeLessThanOrEqual(74);
    expect(finding).toMatchObject({ severity: 'critical', step: 500 });
    expect(record.lastStep).toBe(500);
  });

  it('stops practice at that step, and going back undoes the turn of the valve', () => {
    const core = openSession(scenario, { mode: 'practice', seed: 1 });
    playPlan(core, [...before, 'manifold high 1']);
    expect(core.view().stopped).toMatchObject({ rule: 'canOnHigh', step: 500, rewindStep: 500 });
    core.send({ do: 'rewind', step: 500 });
    expect(core.view().stopped).toBeNull();
    expect(core.advance(50).stepsDone).toBe(50);
  });
});
