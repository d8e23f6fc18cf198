/** Whoever takes a job up again finds the last ten minutes as they were: what instruments read and what happened. */
import { expect, test } from 'vitest';
import { CHANNELS, gaugeHistory } from '../../src/app/gaugeHistory';
import { openCore } from '../../src/app/openCore';
import type { SessionCore } from '../../src/session/corePort';
import { playPlan } from '../../src/session/plan/playPlan';

const LINES = [
  ...['begin', 'wear goggles', 'wear gloves', 'door open', 'cap port-a off'],
  ...['couple gauge-low port-a side-middle,fender,mat', 'coupler gauge-low open'],
];
const THIRTEEN_MINUTES_S = 13 * 60;

/** Lives on second by second and gives what the screen would have kept of it. */
function lived(core: SessionCore, seconds: number) {
  const history = gaugeHistory();
  const frame = new Float64Array(core.channels.length);
  const index = new Map(core.channels.map(({ id }, at) => [id, at]));
  for (let second = 0; second < seconds; second++) {
    core.advance(50);
    core.writeFrame(frame);
    history.add(core.step, (channel) => frame[index.get(channel) ?? -1] ?? Number.NaN);
  }
  return history;
}

test.each(['practice', 'assessed'] as const)(
  'a %s job goes on with the minutes that were lived',
  async (mode) => {
    const request = { scenarioId: 'warm-at-the-lights', mode, seed: 1 } as const;
    const { core, past } = await openCore({ ...request, log: null });
    expect(past).toEqual([]);
    expect(playPlan(core, LINES)).toEqual([]);
    const before = lived(core, THIRTEEN_MINUTES_S);
    expect(playPlan(core, ['engine 900'])).toEqual([]);
    const later = lived(core, 60);
    const again = await openCore({ ...request, log: core.log() });
    const history = gaugeHistory();
    history.goOn(again.past, again.core.view().happened);
    for (const channel of CHANNELS) {
      const { seconds, values } = history.of(channel);
      const old = before.of(channel).values.slice(60 - 600 - 1);
      expect(seconds).toHaveLength(601);
      expect(seconds.at(-1)).toBe(Math.floor(core.step / 50));
      expect(values).toEqual([...old, ...later.of(channel).values]);
    }
    expect(Math.max(...history.of('lowGauge.gaugePressurePa').values)).toBeGreaterThan(1e5);
    expect(history.happened().map(({ id }) => id)).toEqual(['engine-started']);
    expect(history.happened().every(({ step }) => step >= core.step - 600 * 50)).toBe(true);
  },
);
