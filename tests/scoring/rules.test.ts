/** Every rule that ships: a record that breaks it, and one that just does not. */
import { describe, expect, it } from 'vitest';
import type { Rule } from '../../shared/schema/rubric';
import { compileRule, type Verdict } from '../../src/scoring/compileRule';
import { rowMoments } from '../../src/scoring/rowMoments';
import type { MeasureId } from '../../src/session/record/measures';
import { scenarios } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';
import { airCases } from '../support/airRuleCases';
import { hazardCases } from '../support/hazardRuleCases';
import { inLoopCases } from '../support/inLoopRuleCases';
import { lawCases } from '../support/lawRuleCases';
import { newGasCases } from '../support/newGasRuleCases';
import { pipeCases } from '../support/pipeRuleCases';
import { type HandRow, handRecord } from '../support/records';
import { at, cases as carCases, ev, low, ON, open } from '../support/ruleCases';
import { ruleDefinitions } from '../support/ruleDefinitions';
import { serviceCases } from '../support/serviceRuleCases';
import { taskCases } from '../support/taskRuleCases';
import { vanCases } from '../support/vanRuleCases';

const cases = {
  ...hazardCases,
  ...carCases,
  ...serviceCases,
  ...taskCases,
  ...lawCases,
  ...vanCases,
  ...newGasCases,
  ...airCases,
  ...pipeCases,
  ...inLoopCases,
};

const rules = ruleDefinitions([...rubrics.values()], scenarios);

function judge(rule: Rule, rows: readonly HandRow[], measures?: Partial<Record<MeasureId, number>>): Verdict {
  const record = handRecord(rows, measures);
  return compileRule(rule, record)(record, rowMoments(record));
}

describe('a rule that ships', () => {
  it('has a case here, each of them', () => {
    expect(Object.keys(cases).sort()).toEqual([...rules.keys()].sort());
  });

  it.each([...rules])('%s breaks, and just does not', (key, rule) => {
    const { broken, kept, brokenBy, keptBy, others = [] } = cases[key];
    expect(judge(rule, broken, brokenBy)).toMatchObject({ status: 'broken' });
    expect(judge(rule, kept, keptBy)).toMatchObject({ status: 'kept', share: 1, times: 0 });
    for (const other of others) {
      expect(judge(rule, other.broken)).toMatchObject({ status: 'broken' });
      expect(judge(rule, other.kept)).toMatchObject({ status: 'kept', share: 1, times: 0 });
    }
  });
});

describe('a rule', () => {
  const rule = (id: string): Rule => rules.get(id) as Rule;

  it('has nothing to say where its matter never came up', () => {
    expect(judge(rule('eyes'), [at(0), at(50)])).toMatchObject({ status: 'idle', share: 0 });
    expect(judge(rule('papersRead'), [at(0), at(50, { 'sheet.label.read': ON })])).toMatchObject({
      status: 'idle',
    });
  });

  it('points at the row in which it was broken first, and counts how often', () => {
    const open1 = { 'can.can-1.valveSixteenths': 4 };
    const noted = ev('noted', 'charging-gauge');
    const verdict = judge(rule('readShut'), [
      at(0),
      at(10, open1, noted),
      at(20, {}, noted),
      at(30, {}, noted),
    ]);
    expect(verdict).toMatchObject({ status: 'broken', row: 1, times: 3 });
  });

  it('is critical at the instant a can is opened to the high side, whatever the number', () => {
    for (const pressure of [-100_000, 0, 700_000, 2_000_000]) {
      const rows = [at(0, { 'highSide.gaugePressurePa': pressure }), at(7, {}, ev('can-open-to', 'high'))];
      expect(judge(rule('canOnHigh'), rows)).toMatchObject({ status: 'broken', row: 1 });
      expect(rule('canOnHigh').severity).toBe('critical');
    }
  });

  it('is never critical for what was undone before pressure was admitted', () => {
    const empty = { 'lowSide.gaugePressurePa': -101_000, 'highSide.gaugePressurePa': -101_000 };
    const undone = [
      at(0, empty),
      at(5, {}, open),
      at(6, {}, ev('coupler-shut')),
      at(7, { 'gear.goggles': ON }),
    ];
    expect(judge(rule('eyes'), undone)).toMatchObject({ status: 'kept' });
  });

  it('is advice and no fault where no place was told, and has no points to be had', () => {
    const told = (known: number) => [at(0, { 'law.known': known, 'law.mayCharge': 0 }), at(10, {}, low)];
    expect(judge(rule('lawCharge'), told(ON))).toMatchObject({ status: 'broken', counts: true });
    expect(judge(rule('lawCharge'), told(0))).toMatchObject({ status: 'advised', share: 0, counts: false });
    const allowed = [at(0, { 'law.known': 0 }), at(10, {}, low)];
    expect(judge(rule('lawCharge'), allowed)).toMatchObject({ status: 'idle', counts: false });
  });

  it('about training is silent for whoever has it, whatever was opened or left unsaid', () => {
    const trained = { 'person.trainedForCar': ON };
    for (const id of ['beyondTraining', 'saidRefer']) {
      const verdict = judge(rule(id), [at(0, trained), at(5, {}, open), at(10, {}, ev('finished'))]);
      expect([id, verdict]).toMatchObject([id, { status: 'idle', counts: false }]);
    }
  });

  it('about proof has no points to be had before the ghosts have run', () => {
    const proven = (justified: number) =>
      judge(rule('causeProven'), [at(0)], { 'diagnosis.justified': justified });
    expect(proven(Number.NaN)).toMatchObject({ status: 'idle', counts: false });
    expect(proven(0.25)).toMatchObject({ status: 'broken', share: 0.25, counts: true });
  });

  it('gives nothing for a charge left alone by somebody who never said so', () => {
    for (const id of ['nothingAdded', 'chargeKept', 'neverCharge', 'saidNo']) {
      const luck = judge(rule(id), [at(0, {}, ev('decided', 'stop-charging')), at(10, {}, ev('finished'))]);
      expect([id, luck.share]).toEqual([id, 0]);
    }
  });

  it('gives an outcome points by a straight line', () => {
    const share = (error: number): number =>
      judge(rule('chargeWeighed'), [at(0, {}, low)], { 'charge.errorKg': error }).share;
    expect(share(0.035)).toBeCloseTo(0.5, 12);
    expect(share(0.05)).toBe(0);
    expect(share(0.5)).toBe(0);
  });
});
