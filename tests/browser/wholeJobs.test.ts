/** A whole job on every vehicle, to a passed debrief: in the drawn bay by keys alone, by fingers alone, and in words alone. */
import { describe, expect, test } from 'vitest';
import { scenarioById } from '../../src/session/scenario/library';
import { jobOf } from '../support/hands/doors';
import { fingers, keys } from '../support/hands/hands';
import { playByHand } from '../support/hands/playByHand';
import { hashWithoutScreen } from '../support/hashWithoutScreen';
import { isLongRun } from '../support/isLongRun';
import { begin, debriefText, openSitting, playThrough } from './driver';

/** The shortest job of each vehicle that has hoses on, or a can in the hand, or a tool led along a pipe. */
const JOBS = [
  ['pickup', 'drill-hose-in-the-belt'],
  ['hatchback', 'same-needle-right'],
  ['sedan', 'drill-can-on-high'],
  ['van', 'warm-in-the-front'],
  ['compact', 'two-caps-two-lies'],
  ['electric', 'the-wrong-can'],
] as const;

/** On a machine that others use too. */
const timeout = 900_000;

/** Nothing turns while nobody looks on: the machine is free for the hands. */
const STILL = { viewport: { width: 1024, height: 700 }, reducedMotion: 'reduce' } as const;
const TABLET = { ...STILL, viewport: { width: 1366, height: 1024 }, hasTouch: true, isMobile: true };

async function expectPassed(page: Parameters<typeof debriefText>[0]): Promise<void> {
  const score = Number(/\d+/.exec(await debriefText(page, 'score'))?.[0]);
  expect(score).toBeGreaterThanOrEqual(95);
}

/** By hand a job takes a minute or more: two cars by keys and one by fingers in the short run, all in the long. */
const cars: readonly string[] = JOBS.map(([car]) => car);
const KEYED = isLongRun ? cars : ['pickup', 'sedan'];
const TOUCHED = isLongRun ? cars : ['pickup'];

describe.each(JOBS)('the %s, %s', (vehicle, scenarioId) => {
  const scenario = scenarioById(scenarioId);
  const { solution } = scenario.data.plans;

  test('belongs to this vehicle', () => expect(scenario.data.vehicle).toBe(vehicle));

  test.runIf(KEYED.includes(vehicle))('by keys alone', { timeout }, async () => {
    const { page } = await openSitting({ scenario: scenarioId, context: STILL }, 'drawn');
    await begin(page);
    await page.waitForSelector('.bay-twin [data-target]', { state: 'attached' });
    await playByHand(keys(page), solution, jobOf(scenario));
    await expectPassed(page);
  });

  test.runIf(TOUCHED.includes(vehicle))('by fingers alone', { timeout }, async () => {
    const { page } = await openSitting({ scenario: scenarioId, context: TABLET }, 'drawn');
    await page.locator('.brief .btn.pri').tap();
    await page.waitForSelector('.bay-twin [data-target]', { state: 'attached' });
    await playByHand(fingers(page), solution, jobOf(scenario));
    await expectPassed(page);
  });

  test('in words alone, to the log of the command line', { timeout }, async () => {
    const { page } = await openSitting({ scenario: scenarioId });
    await playThrough(page, solution);
    await expectPassed(page);
    expect(await debriefText(page, 'log-hash')).toContain(hashWithoutScreen(scenarioId, 'solution'));
  });
});
