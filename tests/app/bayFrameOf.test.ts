/** The frame that the bay draws is made of what a person has: no channel of the truth is asked, in any mode. */
import { expect, test } from 'vitest';
import { bayFrameOf } from '../../src/app/bayFrameOf';
import type { RunningSession } from '../../src/app/session';
import { layoutOf } from '../../src/layout/layouts';
import type { WorkUi } from '../../src/panels/workUi';
import { oneCore } from '../support/oneJob';

test('a frame asks for cues, readings and controls, and is the same with the truth hidden', () => {
  const frames = (['practice', 'assessed'] as const).map((mode) => {
    const core = oneCore({ mode });
    core.send({ do: 'begin' });
    core.advance(50);
    const kinds = new Map(core.channels.map(({ id, kind }) => [id, kind]));
    const asked = new Set<string>();
    const numbers = new Float64Array(core.channels.length);
    core.writeFrame(numbers);
    const model = {
      layout: layoutOf('hatchback'),
      mode: 'assessed',
      facts: { vehicleId: 'hatchback' },
      view: () => core.view(),
      placeOf: () => null,
      choices: () => ['charging'],
      units: () => ({ pressure: 'kPa', temperature: 'degC', mass: 'g' }),
      canPrint: 'R-134a',
      bayLabel: () => ['A/C', 'R-134a 0.48 kg'],
      signal(id: string) {
        asked.add(id);
        const index = core.channels.findIndex((channel) => channel.id === id);
        return index < 0 ? Number.NaN : numbers[index];
      },
    };
    const ui = { heldTool: () => null, open: () => null };
    const running = { model, told: () => 0 } as unknown as RunningSession;
    const frame = bayFrameOf(running, ui as unknown as WorkUi);
    expect(asked.size).toBeGreaterThan(40);
    expect([...asked].filter((id) => kinds.get(id) === 'truth')).toEqual([]);
    return frame;
  });
  expect(frames[0]).toEqual(frames[1]);
  expect(frames[0].print.rows.map(([name]) => name)).toEqual(['Refrigerant', 'Charge', 'Oil', 'Expansion']);
});
