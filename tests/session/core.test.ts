/** What the core takes, refuses, shows and remembers. */
import { describe, expect, it } from 'vitest';
import type { Command } from '../../src/plant/commandSpecs';
import { connected, feeding, give, oneCore } from '../support/oneJob';

describe('the core', () => {
  it('holds the clock and refuses the bay until the work has begun, and again after it is finished', () => {
    const core = oneCore();
    expect(core.advance(10).stepsDone).toBe(0);
    expect(core.send({ do: 'wear', item: 'goggles' })).toMatchObject({ reason: 'session.refused.notBegun' });
    give(core, { do: 'begin' });
    core.advance(10);
    give(core, { do: 'finish' });
    expect(core.view().phase).toBe('debrief');
    expect(core.advance(10).stepsDone).toBe(0);
    expect(core.send({ do: 'wear', item: 'goggles' })).toMatchObject({ reason: 'session.refused.over' });
    expect(core.log()).toMatchObject({ lastStep: 10, commands: [{ step: 0 }, { step: 10 }] });
  });

  it('does not log a refused command, whoever refuses it', () => {
    const core = oneCore();
    give(core, { do: 'begin' });
    const wrong: Record<string, Command> = {
      'refused.doesNotFit': { do: 'couple', hose: 'charging', port: 'port-a', route: '' },
      'session.refused.noSuchCommandNear': { do: 'copule', hose: 'charging' } as unknown as Command,
      'session.refused.argumentMissing': { do: 'couple', hose: 'charging' } as unknown as Command,
      'session.refused.noSuchArgumentNear': {
        do: 'cap',
        port: 'port-a',
        to: 'on',
        por: 'x',
      } as unknown as Command,
      'session.refused.notAChoice': { do: 'wear', item: 'hat' },
      'session.refused.notInRange': { do: 'engine', rpm: 1501 },
      'session.refused.notText': { do: 'wear', item: 3 },
    };
    for (const [reason, command] of Object.entries(wrong))
      expect(core.send(command)).toMatchObject({ ok: false, reason });
    expect(core.log().commands).toHaveLength(1);
  });

  it('keeps the truth out of the frames of an assessed session, and only there', () => {
    const kinds = (mode: 'assessed' | 'practice') =>
      new Set(oneCore({ mode }).channels.map(({ kind }) => kind));
    expect(kinds('assessed').has('truth')).toBe(false);
    expect(kinds('practice').has('truth')).toBe(true);
  });

  it('writes a frame in the order of its channels', () => {
    const core = oneCore({ mode: 'assessed' });
    give(core, { do: 'begin' }, ...connected, { do: 'engine', rpm: 1500 });
    const frame = new Float64Array(core.channels.length);
    core.writeFrame(frame);
    const at = (id: string): number =>
      frame[core.channels.findIndex((channel) => channel.id === id)] as number;
    expect(at('engine.rpm')).toBe(1500);
    expect(at('gear.goggles')).toBe(1);
    expect(at('hose.charging.couplerOpen')).toBe(1);
    expect(Number.isNaN(at('airThermometer.temperatureK'))).toBe(true);
  });

  it('runs until something notable happens, and no further', () => {
    const core = oneCore();
    give(
      core,
      { do: 'begin' },
      ...connected,
      ...feeding,
      { do: 'engine', rpm: 1500 },
      { do: 'ac', to: 'on' },
    );
    const run = core.advance(30_000, true);
    expect(run.notable).toBe('clutchStill');
    expect(run.stepsDone).toBeGreaterThan(1000);
    expect(core.step).toBe(run.stepsDone);
    expect(core.view().happened[0]).toMatchObject({ id: 'clutch-in', notable: true, step: core.step });
  });

  it('says what a command would come to without doing it', () => {
    const core = oneCore();
    give(core, { do: 'begin' });
    const hash = core.stateHash();
    expect(core.wouldRefuse({ do: 'couple', hose: 'charging', port: 'port-b', route: '' })).toMatchObject({
      reason: 'refused.capOn',
    });
    expect(core.wouldRefuse({ do: 'cap', port: 'port-b', to: 'off' })).toBeNull();
    expect(core.stateHash()).toBe(hash);
    expect(core.log().commands).toHaveLength(1);
  });

  it('keeps card, deliveries and hints, and raises the revision with them', () => {
    const core = oneCore();
    give(core, { do: 'begin' });
    const before = core.view().revision;
    give(
      core,
      { do: 'note-reading', channel: 'scale' },
      { do: 'hint', level: 2 },
      { do: 'decide', answer: 'charge' },
    );
    const view = core.view();
    expect(view.revision).toBeGreaterThan(before);
    expect(view.deliveries).toEqual([{ id: 'noted', done: true }]);
    expect(view.hints).toEqual({ opened: 2, levels: 3 });
    expect(view.card.map(({ kind }) => kind)).toEqual(['reading', 'decision']);
    expect(view.card[0]).toMatchObject({ value: 0.45, unit: 'kg', params: { channel: 'scale' } });
  });
});
