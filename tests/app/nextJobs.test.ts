import { describe, expect, test } from 'vitest';
import { branchAt } from '../../src/app/branchAt';
import { DRILL, idsFor, PRACTISED_BY } from '../../src/app/nextJobs';
import { scenarioData } from '../../src/app/scenarioFacts';
import type { DebriefData } from '../../src/panels/debriefModel';
import { openSession } from '../../src/session/openSession';
import { scenarioById } from '../../src/session/scenario/library';

const data = (lost: string): DebriefData =>
  ({
    scored: true,
    findings: [],
    domains: Object.keys(PRACTISED_BY).map((id) => ({ id, possible: 20, earned: id === lost ? 5 : 20 })),
  }) as unknown as DebriefData;

describe('what to take next', () => {
  test('names jobs that ship', () => {
    const shipped = scenarioData.map(({ id }) => id);
    const named = Object.values(PRACTISED_BY).flat();
    expect(named.filter((id) => id !== DRILL && !shipped.includes(id))).toEqual([]);
  });

  test('comes from the part in which most was lost, and is never the same job', () => {
    expect(idsFor('leaves', data('diagnosis'))).toEqual(
      PRACTISED_BY.diagnosis.filter((id) => id !== 'leaves'),
    );
    expect(idsFor('leaves', data('finding'))[0]).toBe(DRILL);
  });
});

describe('going on from a moment', () => {
  const scenario = scenarioById('weighed-in');
  const core = openSession(scenario, { mode: 'practice', seed: 2 });
  core.send({ do: 'begin' });
  core.send({ do: 'door', to: 'open' });
  core.advance(1000);
  core.send({ do: 'wear', item: 'goggles' });
  core.send({ do: 'wear', item: 'gloves' });
  core.advance(600);
  core.send({ do: 'finish' });
  const log = core.log();
  const deeds = (step: number, deed: number | null): string[] =>
    branchAt(log, step, deed).commands.map(({ command }) => String(command.item ?? command.do));

  test('stands just before the deed that is to be done otherwise', () => {
    expect(deeds(1000, 4)).toEqual(['begin', 'door', 'goggles']);
    expect(branchAt(log, 1000, 4).lastStep).toBe(1000);
  });

  test('stands a little earlier where something happened by itself, and never after the end', () => {
    expect(deeds(1600, null)).toEqual(['begin', 'door', 'goggles', 'gloves']);
    expect(branchAt(log, 1200, null).lastStep).toBe(700);
    expect(deeds(1600, 5)).not.toContain('finish');
  });

  test('is a session that opens', () => {
    const branch = branchAt(log, 1600, 5);
    expect(openSession(scenario, { mode: 'practice', seed: 2, log: branch }).view().phase).toBe('work');
  });
});
