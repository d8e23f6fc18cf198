/** What can be done now, and why the rest can not. */
import { describe, expect, it } from 'vitest';
import { commandSpecs } from '../../src/plant/commandSpecs';
import { possible } from '../../src/twin/possible';
import { connected, give, oneCore } from '../support/oneJob';

const whyNot = (core: ReturnType<typeof oneCore>) =>
  Object.fromEntries(possible(core).map((entry) => [entry.do, entry.whyNot?.reason ?? null]));

describe('what is possible', () => {
  it('is told for every command there is', () => {
    const core = oneCore();
    expect(possible(core).map((entry) => entry.do)).toEqual(Object.keys(commandSpecs));
  });

  it('is only to begin, before the work has begun', () => {
    const offered = possible(oneCore());
    const nameless = offered.filter(({ args }) =>
      args.some(({ kind, options }) => kind === 'id' && options.length === 0),
    );
    const others = offered.filter((entry) => entry.do !== 'begin' && !nameless.includes(entry));
    expect(offered.find((entry) => entry.do === 'begin')?.whyNot).toBeNull();
    expect(nameless.map((entry) => entry.do)).toEqual(expect.arrayContaining(['probe-line', 'attach']));
    expect(new Set(nameless.map(({ whyNot: why }) => why?.reason))).toEqual(new Set(['twin.nothingToName']));
    expect(new Set(others.map(({ whyNot: why }) => why?.reason))).toEqual(
      new Set(['session.refused.notBegun']),
    );
  });

  it('follows what has been done, and looking changes nothing', () => {
    const core = oneCore();
    give(core, { do: 'begin' });
    const hash = core.stateHash();
    expect(whyNot(core)).toMatchObject({
      couple: 'refused.doesNotFit',
      uncouple: 'refused.notCoupled',
      wear: null,
    });
    give(core, ...connected);
    expect(whyNot(core)).toMatchObject({ uncouple: null, coupler: null });
    expect(core.log().commands).toHaveLength(1 + connected.length);
    expect(hash).not.toBe(core.stateHash());
    const after = core.stateHash();
    possible(core);
    expect(core.stateHash()).toBe(after);
  });

  it('offers the ids that exist here', () => {
    const core = oneCore();
    give(core, { do: 'begin' });
    const couple = possible(core).find((entry) => entry.do === 'couple');
    expect(couple?.args).toMatchObject([
      { name: 'hose', options: ['charging'] },
      { name: 'port', options: ['port-a', 'port-b'] },
      { name: 'route', kind: 'ids', options: ['mat', 'fan'] },
    ]);
  });
});
