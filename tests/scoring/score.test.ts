/** Points, caps and the mark. */
import { describe, expect, it } from 'vitest';
import type { Rule } from '../../shared/schema/rubric';
import { sayFinding } from '../../src/scoring/sayFinding';
import { type ScoringRubric, score } from '../../src/scoring/score';
import { type HandRow, handRecord } from '../support/records';

/** What stands for each of the made-up rules. */
const EVENTS: Readonly<Record<string, string>> = {
  burn: 'hose-caught',
  sting: 'sprayed',
  smudge: 'looked',
  find: 'traced',
  connect: 'coupled',
  charge: 'can-opened',
  stop: 'can-shut',
  name: 'diagnosed',
  gone: 'relief-opened',
};
const base = { quotes: { pressure: 'lowSide.gaugePressurePa' }, references: ['common practice, no source'] };
const done = (
  id: string,
  domain: Rule['domain'],
  points: number,
  severity: Rule['severity'] = 'minor',
): Rule => ({
  ...base,
  id,
  domain,
  points,
  severity,
  done: { event: EVENTS[id] },
});
const never = (id: string, domain: Rule['domain'], points: number, severity: Rule['severity']): Rule => ({
  ...base,
  id,
  domain,
  points,
  severity,
  never: { event: EVENTS[id] },
});
const weights = { safety: 25, finding: 15, connecting: 15, charging: 20, diagnosis: 25 };
const rubricOf = (...rules: Rule[]): ScoringRubric => ({ rules, weights });
const full = rubricOf(
  never('burn', 'safety', 5, 'critical'),
  never('sting', 'safety', 5, 'serious'),
  never('smudge', 'safety', 10, 'minor'),
  done('find', 'finding', 1),
  done('connect', 'connecting', 1),
  done('charge', 'charging', 3),
  done('stop', 'charging', 1, 'serious'),
  done('name', 'diagnosis', 1),
);
const all = ['find', 'connect', 'charge', 'stop', 'name'];
const rows = (...events: string[]): HandRow[] =>
  events.map((id, at) => ({ step: 50 * at, events: [{ id: EVENTS[id] }] }));
const scored = (...events: string[]) => score(handRecord(rows(...events)), full);

describe('the score', () => {
  it('is 100 where every rule is kept', () => {
    expect(scored(...all)).toMatchObject({ score: 100, reported: 100, passed: true, critical: [] });
  });

  it('gives a domain its weight times the share of its points', () => {
    const without = scored('find', 'connect', 'stop', 'name');
    expect(without.domains.charging).toEqual({ earned: 5, possible: 20, capped: false });
    expect(without).toMatchObject({ score: 85, passed: true });
  });

  it('caps a domain at a half for a serious fault, and no lower', () => {
    expect(scored('find', 'connect', 'charge', 'name').domains.charging).toEqual({
      earned: 10,
      possible: 20,
      capped: true,
    });
    expect(scored(...all, 'sting').domains.safety).toEqual({ earned: 12.5, possible: 25, capped: true });
  });

  it('takes a third for each minor fault of one kind, and makes the third serious', () => {
    const safety = (...smudges: string[]) => scored(...all, ...smudges).domains.safety;
    expect(safety('smudge')).toMatchObject({ capped: false });
    expect(safety('smudge').earned).toBeCloseTo((25 * (20 - 10 / 3)) / 20, 10);
    expect(safety('smudge', 'smudge')).toMatchObject({ capped: false });
    expect(safety('smudge', 'smudge', 'smudge')).toEqual({ earned: 12.5, possible: 25, capped: true });
  });

  it('is held one below the mark by a critical fault, and keeps its own value beside it', () => {
    const burnt = scored(...all, 'burn');
    expect(burnt).toMatchObject({ score: 93.8, reported: 74, passed: false, critical: ['burn'] });
    expect(scored('burn', 'find')).toMatchObject({ passed: false });
    expect(scored('burn', 'find').reported).toBe(scored('burn', 'find').score);
  });

  it('is held there by a gate that is seriously broken, and by none that is half reached', () => {
    const gated = rubricOf(...full.rules.filter(({ id }) => id !== 'name'), {
      ...done('name', 'diagnosis', 1, 'serious'),
      gate: true,
    });
    const missed = score(handRecord(rows(...all.filter((id) => id !== 'name'))), gated);
    expect(missed).toMatchObject({ score: 75, reported: 74, passed: false, critical: [], gates: ['name'] });
    expect(score(handRecord(rows(...all)), gated)).toMatchObject({ score: 100, passed: true, gates: [] });
    const near: Rule = {
      ...base,
      id: 'name',
      domain: 'diagnosis',
      points: 1,
      severity: 'serious',
      gate: true,
      outcome: { measure: 'diagnosis.right', full: 1, zero: 0 },
    };
    const judged = (right: number) =>
      score(handRecord(rows(...all), { 'diagnosis.right': right }), {
        ...gated,
        rules: [...gated.rules.filter(({ id }) => id !== 'name'), near],
      });
    expect(judged(0.5)).toMatchObject({ score: 87.5, passed: true, gates: [] });
    expect(judged(0.4)).toMatchObject({ score: 85, reported: 74, passed: false, gates: ['name'] });
  });

  it('passes at 75 and not below', () => {
    const share = (points: number) =>
      rubricOf(done('find', 'finding', points), done('gone', 'finding', 100 - points));
    const only = { safety: 0, finding: 100, connecting: 0, charging: 0, diagnosis: 0 };
    const of = (points: number) => score(handRecord(rows('find')), { ...share(points), weights: only });
    expect(of(75)).toMatchObject({ score: 75, passed: true });
    expect(of(74.9)).toMatchObject({ score: 74.9, passed: false });
  });

  it('is the same whatever order the rules stand in', () => {
    const record = handRecord(rows(...all, 'smudge', 'sting'));
    const turned = { ...full, rules: [...full.rules].reverse() };
    expect(score(record, turned).score).toBe(score(record, full).score);
  });
});

describe('a sentence', () => {
  it('changes with 20 g and with nothing else', () => {
    const rule: Rule = {
      id: 'chargeWeighed',
      domain: 'charging',
      points: 1,
      severity: 'serious',
      references: ['common practice'],
      outcome: { measure: 'charge.errorKg', full: '20 g', zero: '75 g' },
      quotes: { inside: 'loop.massKg', label: 'label.massKg', off: 'charge.errorKg' },
    };
    const told = (kg: number): string => {
      const record = handRecord([{ step: 3000, set: { 'loop.massKg': kg } }], {
        'charge.errorKg': 0.48 - kg,
      });
      return sayFinding(score(record, rubricOf(rule)).findings[0]);
    };
    expect(told(0.42)).toBe(
      'At hand-over at 01:00 the loop held 420 g; the label says 480 g, which is 60 g off.',
    );
    expect(told(0.4)).toBe(
      'At hand-over at 01:00 the loop held 400 g; the label says 480 g, which is 80 g off.',
    );
  });
});
