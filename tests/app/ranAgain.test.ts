import { expect, test } from 'vitest';
import { openCore } from '../../src/app/openCore';

const FOUR_MINUTES = 12_000;

test.each(['practice', 'assessed'] as const)(
  'opening a kept %s session tells how much of its log has been run again, the sound car beside it included',
  async (mode) => {
    const request = { scenarioId: 'warm-at-the-lights', mode, seed: 1 } as const;
    const { core } = await openCore({ ...request, log: null });
    core.send({ do: 'begin' });
    core.advance(FOUR_MINUTES);
    const shares: number[] = [];
    const again = await openCore({ ...request, log: core.log() }, (share) => shares.push(share));
    expect(again.core.stateHash()).toBe(core.stateHash());
    expect(shares.length).toBeGreaterThanOrEqual(4);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares[0]).toBeLessThan(0.3);
    expect(shares.at(-1)).toBeGreaterThanOrEqual(0.75);
    expect(Math.max(...shares)).toBeLessThanOrEqual(1);
    const told = shares.length;
    again.core.advance(FOUR_MINUTES);
    expect(shares.length).toBe(told);
  },
);
