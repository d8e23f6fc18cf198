/** A look at the trainee's own gear opens its form, and asks nothing of the car. */
import { expect, test } from 'vitest';
import { bayIntents } from '../../src/app/bayIntents';
import type { RunningSession } from '../../src/app/session';
import type { Open, WorkUi } from '../../src/panels/workUi';
import type { Command } from '../../src/plant/commandSpecs';

const CANS = [
  { id: 'can-1', onto: null, place: 'mat' },
  { id: 'can-2', onto: null, place: 'scale' },
];

function looked(id: string, cans = CANS) {
  const shown: Open[] = [];
  const sent: Command[] = [];
  const session = {
    view: () => ({ cans, hoses: [{ id: 'gauge-low', port: null }], ports: [] }),
    layout: { ports: [{ id: 'port-a' }] },
    choices: () => ['condenser'],
    send: (command: Command) => sent.push(command),
  };
  const ui = { session, heldTool: () => null, show: (what: Open) => shown.push(what) };
  bayIntents({ model: session } as unknown as RunningSession, ui as unknown as WorkUi).onLook(id);
  return { shown, sent };
}

test.each(['can', 'can-valve', 'can-tilt'])('Enter on %s opens the form of the can that is drawn', (id) => {
  expect(looked(id)).toEqual({ shown: [{ kind: 'tool', tool: 'can-2' }], sent: [] });
  expect(looked(id, CANS.slice(0, 1)).shown).toEqual([{ kind: 'tool', tool: 'can-1' }]);
});

test('a loose coupler opens the gauge set, a port its form, a part is examined, a pipe only shown', () => {
  expect(looked('coupler:low')).toEqual({ shown: [{ kind: 'tool', tool: 'gauge-set' }], sent: [] });
  expect(looked('port-a')).toEqual({ shown: [{ kind: 'port', port: 'port-a' }], sent: [] });
  expect(looked('condenser').sent).toEqual([{ do: 'look', at: 'condenser' }]);
  expect(looked('suction')).toEqual({ shown: [{ kind: 'part', part: 'suction' }], sent: [] });
});

test('the can let go over a free end is screwed on to it, and an end over the can the same; not while it is on one', () => {
  const sent: Command[] = [];
  const cans = [{ id: 'can-1', onto: null as string | null, place: 'mat' }];
  const devices = [{ id: 'vacuum-pump', onto: 'utility' }];
  const session = {
    view: () => ({ cans, devices }),
    choices: () => ['charging', 'utility'],
    send: (command: Command) => sent.push(command),
  };
  const ui = { session, heldTool: () => null, caution: () => null };
  const bay = bayIntents({ model: session } as unknown as RunningSession, ui as unknown as WorkUi);
  expect(bay.validTargets('can')).toEqual(['mat', 'scale', 'end:charging']);
  expect(bay.validTargets('end:charging')).toEqual(['can', 'mat']);
  bay.onDrop('can', 'end:charging', []);
  bay.onDrop('end:charging', 'can', []);
  bay.onDrop('end:charging', 'mat', []);
  expect(sent).toEqual([
    { do: 'tap', can: 'can-1', onto: 'charging' },
    { do: 'tap', can: 'can-1', onto: 'charging' },
  ]);
  cans[0].onto = 'charging';
  expect(bay.validTargets('can')).toEqual(['mat', 'scale']);
});
