/** Three cars, one low needle: short, right, and filled in a hurry read alike, and everything else tells them apart. */
import { describe, expect, it } from 'vitest';
import type { PlanLine } from '../../shared/schema/plan';
import type { RecordedEvent, SessionRecord } from '../../src/session/record/record';
import { valueAt } from '../../src/session/record/record';
import { scenarioById } from '../../src/session/scenario/library';
import { played } from '../support/plans';

const PSI_PA = 6894.757;
const KELVIN_AT_ZERO = 273.15;
const PRINTED_RPM = 1500;

/** At rest, turning for six minutes as the service information asks, and two minutes faster. */
const LOOK: PlanLine[] = [
  'begin',
  'door open',
  'windows open',
  'blower 4',
  'air recirculated',
  'engine 1500',
  'ac on',
  { 'run-on': '5 min' },
  { 'run-on': '1 min' },
  'engine 3000',
  { 'run-on': '1 min', times: 2 },
  'finish',
];

interface Reads {
  at(when: 'rest' | 'printed' | 'fast', signal: string): number;
}

/** The same day for all: what a scenario lets vary stands still. */
function look(id: string): Reads {
  const scenario = scenarioById(id);
  const { record, refused } = played({ ...scenario, data: { ...scenario.data, varies: [] } }, LOOK);
  if (refused.length > 0) throw new Error('not looked at as meant');
  const rows = {
    rest: rowOf(record, ({ id: event }) => event === 'door-opened'),
    printed: rowOf(record, ({ id: event, quantity }) => event === 'engine-speed' && quantity !== PRINTED_RPM),
    fast: rowOf(record, ({ id: event }) => event === 'finished'),
  };
  return { at: (when, signal) => valueAt(record, rows[when], signal) };
}

function rowOf({ events }: SessionRecord, test: (event: RecordedEvent) => boolean): number {
  const found = events.filter(test).at(-1);
  if (!found) throw new Error('no such moment');
  return found.row;
}

const short = look('same-needle-short');
const right = look('same-needle-right');
const air = look('filled-in-a-hurry');
const all = [short, right, air];
const spread = (values: number[]): number => Math.max(...values) - Math.min(...values);

describe('three cars on one day of 27 °C', () => {
  it('stand in the same weather and turn under the same conditions', () => {
    expect(all.map((car) => car.at('rest', 'outside.temperatureK') - KELVIN_AT_ZERO)).toEqual(
      all.map(() => expect.closeTo(27, 6)),
    );
    expect(all.map((car) => car.at('printed', 'clutch.turning'))).toEqual([1, 1, 1]);
    expect(spread(all.map((car) => car.at('printed', 'loop.massKg')))).toBeGreaterThan(0.18);
  });

  it('read the same on the low side, within 2 psi', () => {
    const low = all.map((car) => car.at('printed', 'lowSide.gaugePressurePa'));
    expect(spread(low) / PSI_PA).toBeLessThan(2);
    // and well inside the window of the service information at 27 °C: 190 to 260 kPa
    for (const pa of low) expect(Math.abs(pa - 225_000)).toBeLessThan(35_000);
  });

  it('are told apart at rest, where only air stands over the pressure of the weather', () => {
    const rest = (car: Reads): number => car.at('rest', 'highSide.gaugePressurePa');
    expect(Math.abs(rest(short) - rest(right)) / PSI_PA).toBeLessThan(1);
    expect((rest(air) - rest(right)) / PSI_PA).toBeGreaterThan(8);
  });

  it('are told apart by the high side, which air lifts and a shortage hardly lowers', () => {
    const high = (car: Reads): number => car.at('printed', 'highSide.gaugePressurePa');
    expect((high(air) - high(right)) / PSI_PA).toBeGreaterThan(40);
    expect((high(right) - high(short)) / PSI_PA).toBeLessThan(10);
  });

  it('are told apart by superheat, plainly so when turned fast', () => {
    const heat = (car: Reads, when: 'printed' | 'fast'): number => car.at(when, 'superheatK');
    expect(heat(short, 'printed') - heat(right, 'printed')).toBeGreaterThan(1);
    expect(heat(short, 'fast') - heat(right, 'fast')).toBeGreaterThan(4);
    expect(heat(air, 'fast')).toBeLessThan(heat(right, 'fast'));
  });

  it('are told apart by the liquid line and what stands before it', () => {
    const share = (car: Reads, part: string): number => car.at('printed', `vessel.${part}.liquidRatio`);
    expect(short.at('printed', 'subcoolingK')).toBeLessThan(0.1);
    expect(right.at('printed', 'subcoolingK')).toBeGreaterThan(0.3);
    expect(share(right, 'liquid') - share(short, 'liquid')).toBeGreaterThan(0.1);
    expect(share(right, 'drier')).toBeGreaterThan(2 * share(short, 'drier'));
  });
});
