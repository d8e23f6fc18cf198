/** What an assessed session lets through: no number that no instrument showed. */
import { describe, expect, it } from 'vitest';
import type { PlanLine } from '../../shared/schema/plan';
import type { PlantEvent } from '../../src/plant/commandSpecs';
import type { Happening, Mode, SessionCore } from '../../src/session/corePort';
import { openSession } from '../../src/session/openSession';
import { readPlanLine, singleLines } from '../../src/session/plan/planWords';
import { scenarioById } from '../../src/session/scenario/library';
import { toldEvent } from '../../src/session/toldEvents';

/** A judged port, a can on the wrong car, a hose pulled off open. */
const LINES: readonly PlanLine[] = [
  'begin',
  'wear goggles',
  'door open',
  'judge-port port-a low',
  'judge-port port-b low',
  'zero charging',
  'cap port-a off',
  'couple charging port-a side-middle,fender,mat',
  'tap can-1 charging',
  'can-valve can-1 16',
  'coupler charging open',
  { 'run-on': '10 s' },
  'note-reading charging-gauge',
  'engine 900',
  'can-valve can-1 0',
  'write-label 400',
  'uncouple charging',
];

interface Seen {
  readonly core: SessionCore;
  readonly raw: readonly PlantEvent[];
  readonly told: readonly PlantEvent[];
}

function play(mode: Mode): Seen {
  const raw: PlantEvent[] = [];
  const told: PlantEvent[] = [];
  const scenario = scenarioById('warm-at-the-lights');
  const core = openSession(scenario, { mode, seed: 3, observe: ({ moment }) => raw.push(...moment.events) });
  for (const line of singleLines(LINES)) {
    const reading = readPlanLine(line);
    if (!('act' in reading)) throw new Error(reading.problem.reason);
    if (reading.act.kind === 'wait') core.advance(reading.act.steps);
    else {
      const outcome = core.send(reading.act.command);
      if (outcome.ok) told.push(...outcome.events);
    }
  }
  return { core, raw, told };
}

const HIDDEN = ['judged', 'sprayed', 'high-pressure-trip', 'relief-opened', 'liquid-slug', 'hose-caught'];
const numbered = (events: readonly PlantEvent[]): Set<string> =>
  new Set(events.filter(({ quantity }) => quantity !== undefined).map(({ id }) => id));

describe('an assessed session', () => {
  const { core, raw, told } = play('assessed');
  const { happened } = core.view();

  it('brings about what has to stay hidden', () => {
    expect(raw.filter(({ id }) => id === 'judged').map(({ quantity }) => quantity)).toContain(0);
    expect(raw.find(({ id }) => id === 'sprayed')?.quantity).toBeGreaterThan(0);
  });

  it('tells those events without their number, in outcomes and in the view', () => {
    for (const events of [told, happened] as const) {
      const ids = events.map(({ id }) => id);
      expect(ids).toEqual(expect.arrayContaining(['judged', 'sprayed']));
      for (const id of HIDDEN) expect(numbered(events)).not.toContain(id);
    }
    const secret = raw.find(({ id }) => id === 'sprayed')?.quantity;
    expect(JSON.stringify([told, core.view()])).not.toContain(String(secret));
  });

  it('keeps what an instrument showed and what the command said', () => {
    for (const id of ['noted', 'gauge-zeroed', 'engine-started', 'labelled', 'can-opened'])
      expect(numbered(told)).toContain(id);
  });

  it('does not say which side a can is open to', () => {
    expect(raw.find(({ id }) => id === 'can-open-to')?.subject).toBe('low');
    expect(happened.find(({ id }) => id === 'can-open-to')).not.toHaveProperty('subject');
  });

  it.each(HIDDEN)('tells %s without its number', (id) => {
    const event: Happening = { id, subject: 'x', quantity: 7, unit: 'kg', step: 1, notable: true };
    expect(toldEvent(event, 'assessed')).toEqual({ id, subject: 'x', step: 1, notable: true });
  });
});

describe('a practice session', () => {
  it('does not say either whether a port was rightly judged, and says the rest', () => {
    const { core, told } = play('practice');
    for (const events of [told, core.view().happened] as const) {
      expect(numbered(events)).not.toContain('judged');
      expect(numbered(events)).toContain('sprayed');
    }
  });
});
