/** Going back in practice, and what it does to the log. */
import { describe, expect, it } from 'vitest';
import { connected, feeding, give, oneCore } from '../support/oneJob';

describe('going back', () => {
  it('to a step restores the state of that step, with its commands but the last', () => {
    const core = oneCore();
    give(core, { do: 'begin' });
    core.advance(200);
    give(core, ...connected);
    const before = core.stateHash();
    give(core, ...feeding.slice(0, 1));
    core.advance(7000);
    give(core, { do: 'rewind', step: 200 });
    expect(core.step).toBe(200);
    expect(core.stateHash()).toBe(before);
    expect(core.view().cans[0]?.onto).toBeNull();
    expect(core.view().hoses[0]).toMatchObject({ port: 'port-b', couplerOpen: true });
  });

  it('to a step without a command undoes nothing that came before it', () => {
    const core = oneCore();
    give(core, { do: 'begin' }, ...connected);
    core.advance(6500);
    const at6500 = core.stateHash();
    core.advance(4000);
    give(core, { do: 'rewind', step: 6500 });
    expect(core.stateHash()).toBe(at6500);
    expect(core.view().ports[1]).toMatchObject({ capOn: false, hose: 'charging' });
  });

  it('stands in the log, and a session resumed from that log stands where this one does', () => {
    const core = oneCore();
    give(core, { do: 'begin' }, ...connected);
    core.advance(5000);
    give(core, ...feeding);
    core.advance(100);
    give(core, { do: 'rewind', step: 5000 });
    core.advance(3333);
    give(core, { do: 'rewind', step: 4000 });
    core.advance(70);
    const resumed = oneCore({ log: core.log() });
    expect(core.log().commands.filter(({ command }) => command.do === 'rewind')).toHaveLength(2);
    expect(resumed.stateHash()).toBe(core.stateHash());
    expect(resumed.logHash()).toBe(core.logHash());
    expect(resumed.view()).toEqual({ ...core.view(), revision: resumed.view().revision });
  });

  it('is refused in an assessed session and into the future', () => {
    const assessed = oneCore({ mode: 'assessed' });
    give(assessed, { do: 'begin' });
    assessed.advance(10);
    expect(assessed.send({ do: 'rewind', step: 5 })).toMatchObject({
      ok: false,
      reason: 'session.refused.noGoingBack',
    });
    const practice = oneCore();
    give(practice, { do: 'begin' });
    expect(practice.send({ do: 'rewind', step: 5 })).toMatchObject({
      ok: false,
      reason: 'session.refused.notYetLived',
    });
    expect(practice.log().commands).toHaveLength(1);
  });
});

describe('a critical mistake', () => {
  const withoutGoggles = [...connected.slice(1), ...feeding] as const;

  it('stops a practice session at that instant and offers the moment before', () => {
    const core = oneCore();
    give(core, { do: 'begin' });
    core.advance(50);
    give(core, ...withoutGoggles);
    expect(core.view().stopped).toMatchObject({ rule: 'eyes', step: 50, rewindStep: 50 });
    expect(core.view().regions.safety).toBe('stopped');
    expect(core.advance(100)).toEqual({ stepsDone: 0, notable: null });
    expect(core.send({ do: 'door', to: 'open' })).toMatchObject({
      ok: false,
      reason: 'session.refused.stopped',
    });
    give(core, { do: 'rewind', step: 50 });
    expect(core.view()).toMatchObject({ stopped: null, cans: [{ valveSixteenths: 0, onto: 'charging' }] });
    expect(core.advance(100).stepsDone).toBe(100);
  });

  it('may be carried on from as things stand', () => {
    const core = oneCore();
    give(core, { do: 'begin' }, ...withoutGoggles, { do: 'begin' });
    expect(core.advance(100).stepsDone).toBe(100);
    expect(core.view().regions.safety).toBe('breached');
    expect(core.view().cans[0]?.valveSixteenths).toBe(8);
  });

  it('does not stop an assessed session', () => {
    const core = oneCore({ mode: 'assessed' });
    give(core, { do: 'begin' }, ...withoutGoggles);
    expect(core.view().stopped).toBeNull();
    expect(core.advance(100).stepsDone).toBe(100);
  });

  it('that follows from an earlier command takes that command back', () => {
    const core = oneCore();
    give(core, { do: 'begin' }, ...connected.slice(0, 2), {
      do: 'couple',
      hose: 'charging',
      port: 'port-b',
      route: 'fan',
    });
    core.advance(500);
    give(core, { do: 'engine', rpm: 900 });
    expect(core.advance(500).stepsDone).toBe(1);
    expect(core.view().stopped).toMatchObject({ rule: 'caught', step: 501, rewindStep: 500 });
    give(core, { do: 'rewind', step: 500 });
    expect(core.advance(500).stepsDone).toBe(500);
  });
});
