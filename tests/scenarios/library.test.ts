/** What the lessons are together: no two alike, nothing that was built without its lesson, and each one complete. */
import { describe, expect, it } from 'vitest';
import type { PlanLine } from '../../shared/schema/plan';
import { listTools } from '../../src/cli/lists/listTools';
import { FAULT_GROUPS, faultIds } from '../../src/faults/registry';
import { vehicleIds, vehicleOf } from '../../src/loop/car/vehicles';
import { scenarios } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';
import type { Scenario } from '../../src/session/scenario/scenario';
import { parseQuantity } from '../../src/units/quantity';

const PLANS = ['solution', 'careless', 'nothing'] as const;
/** Said by everybody who charges, beside the decision itself. */
const NO_DECISION = 'stop-charging';
/** Instruments by the channel that a plan notes; the others are noted under their own name. */
const CHANNELS: Readonly<Record<string, string>> = {
  charging: 'charging-gauge',
  low: 'low-gauge',
  high: 'high-gauge',
  'identifier-share': 'gas-r134a',
};
const TEACHERS_NOTE = [/\bAim:/, /\bExpected path:/, /\bMisconceptions?\b[^.]*:/, /\bAsk:/];
const IN_A_HURRY = /\b(ten minutes|no more|in a hurry|right now|cannot wait)\b/i;
const AIRSIDE = new Set(
  Object.entries(FAULT_GROUPS)
    .filter(([group]) => group !== 'contents' && group !== 'leaks')
    .flatMap(([, faults]) => faults.map(({ id }) => id)),
);

const all = scenarios.map(({ data }) => data);
const ids = (of: Scenario['data'][]): string[] => of.map(({ id }) => id);
const faultsOf = (of: Scenario['data']): string[] => of.faults.map(({ fault }) => fault).sort();

function wordsOf(lines: readonly PlanLine[]): string[] {
  return lines.flatMap((line) => {
    if (typeof line === 'string') return [line];
    return 'repeat' in line ? wordsOf(line.repeat as PlanLine[]) : [];
  });
}
const solved = (of: Scenario['data']): string[] => wordsOf(of.plans.solution);
const decisionOf = (of: Scenario['data']): string | undefined =>
  solved(of)
    .filter((line) => line.startsWith('decide ') && line !== `decide ${NO_DECISION}`)
    .map((line) => line.slice('decide '.length))
    .at(-1);

const holdsItsLabel = ({ vehicle, contents }: Scenario['data']): boolean =>
  Math.abs(parseQuantity(contents.charge, 'mass') - vehicleOf(vehicle).label.charge) < 1e-9 &&
  contents.state !== 'evacuated';
const labelled = (of: Scenario['data']) => vehicleOf(of.vehicle).label;

/** Everything a tool of the list may be called where a lesson lays it out or uses it. */
function toolsUsed(): Set<string> {
  const used = new Set<string>();
  for (const { bench, plans } of all) {
    for (const tool of bench.tools ?? []) used.add(tool);
    if (bench.hoses.includes('charging')) used.add('charging');
    if (bench.hoses.includes('gauge-set'))
      for (const hose of ['gauge-low', 'gauge-high', 'utility']) used.add(hose);
    const lines = PLANS.flatMap((plan) => wordsOf(plans[plan]));
    if (lines.includes('arrange recovery')) used.add('licensed-recovery');
    for (const line of lines)
      if (line.startsWith('note-reading ')) used.add(line.slice('note-reading '.length));
  }
  return used;
}

describe('the lessons together', () => {
  it('are eighteen or more', () => {
    expect(all.length).toBeGreaterThanOrEqual(18);
  });

  it('share vehicle, faults and right decision in no two of them', () => {
    const seen = new Map<string, string[]>();
    for (const of of all) {
      const key = [of.vehicle, ...faultsOf(of), decisionOf(of)].join(' ');
      seen.set(key, [...(seen.get(key) ?? []), of.id]);
    }
    expect([...seen].filter(([, those]) => those.length > 1)).toEqual([]);
  });

  it('use every vehicle, either kind of metering and every refrigerant', () => {
    expect([...new Set(all.map(({ vehicle }) => vehicle))].sort()).toEqual(vehicleIds);
    const kinds = new Set(all.map(({ vehicle }) => vehicleOf(vehicle).metering.kind));
    expect([...kinds].sort()).toEqual(['expansion-valve', 'orifice-tube']);
    const fluids = new Set(all.map(({ contents }) => contents.refrigerant));
    expect([...fluids].sort()).toEqual(['R-12', 'R-1234yf', 'R-134a']);
  });

  it('hide every fault there is', () => {
    const hidden = new Set(all.flatMap(faultsOf));
    expect(faultIds.filter((id) => !hidden.has(id))).toEqual([]);
  });

  it('lay out or use every tool there is', () => {
    const used = toolsUsed();
    const missing = listTools().filter(
      ({ id, kind }) => !used.has(kind === 'instrument' ? (CHANNELS[id] ?? id) : id),
    );
    expect(missing.map(({ id }) => id)).toEqual([]);
  });

  it('ask every critical rule there is', () => {
    const asked = new Set(scenarios.flatMap(({ rules }) => rules.map(({ id }) => id)));
    const critical = [...rubrics.values()].flatMap(({ rules }) =>
      rules.filter(({ severity }) => severity === 'critical'),
    );
    expect(critical.map(({ id }) => id).filter((id) => !asked.has(id))).toEqual([]);
  });

  it('have seven or more in which adding is wrong, four of them with nothing wrong in what the loop holds', () => {
    const left = all.filter((of) => ['do-not-charge', 'refer'].includes(decisionOf(of) ?? ''));
    expect(left.length).toBeGreaterThanOrEqual(7);
    const sound = left.filter((of) => holdsItsLabel(of) && faultsOf(of).every((fault) => AIRSIDE.has(fault)));
    expect(sound.length).toBeGreaterThanOrEqual(4);
  });

  it('have two drills, a conversion, a contaminated car and an owner in a hurry', () => {
    expect(ids(all).filter((id) => id.startsWith('drill-')).length).toBeGreaterThanOrEqual(2);
    const converted = all.filter((of) =>
      solved(of).some((line) => line.startsWith('label-conversion R-134a')),
    );
    expect(ids(converted).length).toBeGreaterThanOrEqual(1);
    const strange = all.filter((of) =>
      faultsOf(of).some((fault) => /^(mixed|wrong)-refrigerant$/.test(fault)),
    );
    expect(ids(strange).length).toBeGreaterThanOrEqual(1);
    expect(ids(all.filter(({ complaint }) => IN_A_HURRY.test(complaint))).length).toBeGreaterThanOrEqual(1);
  });
});

describe('each lesson', () => {
  it('says what its right decision is, and to which task it belongs', () => {
    expect(ids(all.filter((of) => decisionOf(of) === undefined))).toEqual([]);
    expect(ids(all.filter(({ tasks }) => tasks.length === 0))).toEqual([]);
  });

  it('has three plans that come to an end', () => {
    const open = all.filter(({ plans }) => PLANS.some((plan) => wordsOf(plans[plan]).at(-1) !== 'finish'));
    expect(ids(open)).toEqual([]);
  });

  it('tells a teacher the aim, the expected path, the usual misconception and what to ask', () => {
    const lacking = all.map(({ id, teacher }) => [
      id,
      ...TEACHERS_NOTE.filter((part) => !part.test(teacher)).map(String),
    ]);
    expect(lacking.filter(([, ...parts]) => parts.length > 0)).toEqual([]);
  });

  it('fills a car with its own refrigerant, unless that is what is wrong with it', () => {
    const other = all.filter((of) => labelled(of).refrigerant !== of.contents.refrigerant);
    expect(ids(other.filter((of) => !of.found?.converted))).toEqual([]);
  });
});
