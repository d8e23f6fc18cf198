import { describe, expect, it } from 'vitest';
import { AT } from '../../src/loop/car/carNumbers';
import { assemblePlant } from '../../src/plant/assemblePlant';
import { commandSpecs } from '../../src/plant/commandSpecs';
import { makeExecutive } from '../../src/plant/executive';
import { checkPlant } from '../../src/plant/fuzz/checkPlant';
import { fuzzCase, fuzzPairs } from '../../src/plant/fuzz/fuzzCase';
import { fuzzDeck, replayPlant } from '../../src/plant/fuzz/fuzzDeck';
import { PLANT_STATES } from '../../src/plant/fuzz/plantStates';

const SEED = 1;

/**
 * What needs a car of one kind in a state of one kind, such as a seized pickup that is level with the room: a longer deck
 * meets them (`npm run fuzz -- --steps 1e7`).
 */
const SELDOM: ReadonlySet<string> = new Set([
  ...['seized', 'open', 'evacuated', 'standing'].flatMap((state) =>
    ['convert-port', 'disable-port', 'fit-cut-out', 'fill-oil', 'renew-seals'].map(
      (id) => `${id} x ${state}`,
    ),
  ),
  ...['tripped', 'cycled-out', 'idling', 'evacuated', 'seized'].map((state) => `isolate x ${state}`),
]);

/** `npm run fuzz` goes on from here with more steps and other seeds. */
describe('random hands, 300,000 steps on every vehicle, two faults a car', () => {
  const report = fuzzDeck(300_000, SEED);

  it('find no missing number, no negative mass, every species and energy in balance', () => {
    expect(report.findings).toEqual([]);
    expect(report.steps).toBe(300_000);
    expect(report.massError).toBeLessThan(1e-12);
    expect(report.energyError).toBeLessThan(1e-10);
    expect(report.unsolved).toBe(0);
  });

  it('have given every command in every state of a plant where a rule allows it, and in no other', () => {
    expect(Object.keys(report.coverage)).toEqual(Object.keys(commandSpecs));
    for (const row of Object.values(report.coverage)) expect(Object.keys(row)).toEqual(PLANT_STATES);
    expect(report.empty.filter((cell) => !SELDOM.has(cell))).toEqual([]);
    expect(report.surprising).toEqual([]);
  });

  it('have met a thousand pairs of faults on the vehicles; a longer deck meets all', () => {
    expect(report.pairs.of).toBeGreaterThan(3000);
    expect(report.pairs.met).toBeGreaterThan(1000);
  });

  it('would find a number that is none, and mass out of nowhere', () => {
    const { options } = fuzzCase(fuzzPairs(SEED), SEED, 0);
    const parts = assemblePlant(options);
    const plant = makeExecutive(parts);
    const { network, loop } = parts.car;
    expect(checkPlant(plant, parts, true)).toBeNull();
    const kept = network.reserve[AT.cabinK];
    network.reserve[AT.cabinK] = Number.NaN;
    expect(checkPlant(plant, parts, true)).toContain('cabin.temperatureK is NaN');
    network.reserve[AT.cabinK] = kept;
    const at = network.state.indexOf(network.massKg(loop.high, 'oil'));
    network.state[at] += 1e-9;
    expect(checkPlant(plant, parts, true)).toContain('mass error of oil');
    network.state[at] = -1e-9;
    expect(checkPlant(plant, parts, false)).toContain('kg of oil');
  });

  it('do the same again from seed and index', () => {
    const { lines } = replayPlant(600, SEED, 7);
    expect(lines).toEqual(replayPlant(600, SEED, 7).lines);
    expect(lines.at(-1)).toBe('nothing found');
    expect(lines.length).toBeGreaterThan(30);
  });

  it('do it again for as many steps as the deck did: a shorter replay breaks off, and does nothing else', () => {
    const stepsIn = (lines: readonly string[]): number[] =>
      lines.slice(1, -1).map((line) => parseInt(line, 10));
    const [short, long] = [300, 600].map((steps) => replayPlant(steps, SEED, 7).lines);
    expect(Math.max(...stepsIn(short))).toBeLessThan(300);
    expect(Math.max(...stepsIn(long))).toBeGreaterThanOrEqual(300);
    expect(long.slice(0, short.length - 1)).toEqual(short.slice(0, -1));
  });
});
