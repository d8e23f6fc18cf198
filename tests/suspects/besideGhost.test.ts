import { describe, expect, test } from 'vitest';
import type { Command } from '../../src/plant/commandSpecs';
import type { Mode, SessionCore } from '../../src/session/corePort';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';
import { plantOptions } from '../../src/session/scenario/plantOptions';
import { besideGhost } from '../../src/suspects/besideGhost';

const scenario = scenarioById('warm-at-the-lights');

function withGhost(mode: Mode, from?: SessionCore): SessionCore {
  const log = from?.log();
  return besideGhost(
    openSession(scenario, { mode, seed: 1, ...(log ? { log } : {}) }),
    plantOptions(scenario.data, 1),
  );
}

function frameOf(core: SessionCore): (id: string) => number {
  const frame = new Float64Array(core.channels.length);
  core.writeFrame(frame);
  return (id) => frame[core.channels.findIndex((channel) => channel.id === id)];
}

const give = (core: SessionCore, ...commands: Command[]): void => {
  for (const command of commands) expect(core.send(command).ok).toBe(true);
};
const expected = (core: SessionCore): number[] => {
  const of = frameOf(core);
  return core.channels.filter(({ id }) => id.startsWith('expected.')).map(({ id }) => of(id));
};

describe('the ghost beside a session', () => {
  const core = withGhost('practice');
  give(core, { do: 'begin' }, { do: 'door', to: 'open' }, { do: 'engine', rpm: 900 });
  give(core, { do: 'blower', speed: 4 }, { do: 'windows', to: 'open' }, { do: 'ac', to: 'on' });
  core.advance(4000);

  test('shows a healthy car at the end of each frame, beside one that is not', () => {
    const of = frameOf(core);
    const high = of('highSide.gaugePressurePa');
    expect(of('expected.highSide.toGaugePressurePa')).toBeGreaterThan(0);
    expect(high).toBeGreaterThan(of('expected.highSide.toGaugePressurePa'));
    expect(of('expected.point2.pressurePa')).toBeLessThan(of('point2.pressurePa'));
  });

  test('goes back with the session and comes to the same again; a session taken up has it too', () => {
    const before = expected(core);
    give(core, { do: 'ac', to: 'off' });
    core.advance(1000);
    expect(expected(core)).not.toEqual(before);
    give(core, { do: 'rewind', step: 4000 });
    expect(expected(core)).toEqual(before);
    expect(expected(withGhost('practice', core))).toEqual(before);
  });

  test('leaves the session as it would be alone', () => {
    const alone = openSession(scenario, { mode: 'practice', seed: 1, log: core.log() });
    expect(core.stateHash()).toBe(alone.stateHash());
    expect(core.logHash()).toBe(alone.logHash());
  });
});
