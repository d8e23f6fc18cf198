import { describe, expect, it } from 'vitest';
import { type FittingId, fit, fittings } from '../../src/equipment/fittings';

const ids = Object.keys(fittings) as FittingId[];

/** 40 CFR 82 subpart G, appendix H: each refrigerant's high and low fitting differs from every other fitting. */
describe('service fittings', () => {
  it('take their own coupler and no other', () => {
    for (const coupler of ids) {
      for (const port of ids) expect(fit(coupler, port) === 'fits').toBe(coupler === port);
    }
  });

  it('differ in kind or by 1/16 inch where they screw on', () => {
    const screwed = ids.map((id) => fittings[id]).filter(({ kind }) => kind === 'thread');
    for (const a of screwed) {
      for (const b of screwed) {
        if (a !== b) expect(Math.abs(a.diameterM - b.diameterM)).toBeGreaterThanOrEqual(0.0015875 - 1e-12);
      }
    }
  });

  it('tell a hand what is wrong', () => {
    expect(fit('r134a-13', 'r134a-16')).toBe('too-narrow');
    expect(fit('r134a-16', 'r134a-13')).toBe('too-wide');
    expect(fit('r134a-13', 'r12-three-eighths')).toBe('other-kind');
  });
});
