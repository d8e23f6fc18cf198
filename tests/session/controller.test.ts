/** The controller: what it hears, and how the regions move. */
import { describe, expect, it } from 'vitest';
import type { Transition } from '../../src/session/controller/controller';
import { connected, feeding, give, oneCore } from '../support/oneJob';

describe('the controller', () => {
  it('walks the regions by commands and by edges of watches', () => {
    const walked: Transition[] = [];
    const core = oneCore({ observe: ({ transitions }) => walked.push(...transitions) });
    const give1 = (...commands: Parameters<typeof give>[1][]): void => {
      give(core, ...commands);
      core.advance(1);
    };
    give1({ do: 'begin' });
    give1({ do: 'read-sheet', sheet: 'label' }, { do: 'trace', port: 'port-b' });
    give1({ do: 'judge-port', port: 'port-b', side: 'low' });
    for (const command of [...connected, ...feeding]) give1(command);
    give1({ do: 'can-valve', can: 'can-1', turn: 0 });
    give1({ do: 'coupler', hose: 'charging', to: 'shut' }, { do: 'uncouple', hose: 'charging' });
    give1({ do: 'cap', port: 'port-b', to: 'on' });
    give1({ do: 'decide', answer: 'stop-charging' }, { do: 'diagnose', cause: 'leak', sure: 'sure' });
    give1({ do: 'finish' });
    const path = (region: string): string[] =>
      walked.filter((step) => step.region === region).map(({ on, to }) => `${on} ${to}`);
    expect(path('session')).toEqual([
      'plantBuilt briefing',
      'do.begin work',
      'do.finish wrapUp',
      'always scoring',
    ]);
    expect(path('finding')).toEqual(['do.read-sheet read', 'do.trace traced', 'do.judge-port judged']);
    expect(path('connecting')).toEqual([
      'rise.portUncapped uncapped',
      'rise.hoseCoupled coupled',
      'rise.couplerOpen open',
      'fall.couplerOpen coupled',
      'fall.hoseCoupled uncapped',
      'fall.portUncapped capped',
    ]);
    expect(path('charging')).toEqual([
      'rise.canTapped canOn',
      'rise.canFeeding feeding',
      'fall.canFeeding settling',
    ]);
    expect(path('diagnosis')).toEqual(['do.decide decided', 'do.diagnose named']);
    expect(path('safety')).toEqual([]);
  });

  it('scores nothing when exploring', () => {
    const core = oneCore({ mode: 'explore' });
    give(core, { do: 'begin' }, { do: 'finish' });
    expect(core.view().regions).toEqual({});
    expect(core.view().phase).toBe('debrief');
  });

  it('hears when eyes are exposed at an open coupler', () => {
    const core = oneCore();
    give(core, { do: 'begin' }, ...connected, { do: 'take-off', item: 'goggles' });
    expect(core.view().regions.safety).toBe('exposed');
    give(core, { do: 'wear', item: 'goggles' });
    expect(core.view().regions.safety).toBe('clear');
  });

  it('hears a thousand steps without being told of one', () => {
    const walked: Transition[] = [];
    const core = oneCore({ observe: ({ transitions }) => walked.push(...transitions) });
    give(core, { do: 'begin' }, ...connected);
    const before = walked.length;
    core.advance(1000);
    expect(walked).toHaveLength(before);
  });
});
