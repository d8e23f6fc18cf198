/**
 * Every command has a door on the page: three jobs, whose places and benches have between them what there is, are opened
 * in words, and everything is pressed. What the worker is sent is listened to.
 */
import { expect, test } from 'vitest';
import { type CommandId, commandSpecs } from '../../src/plant/commandSpecs';
import { type Door, listenToCommands, pressEveryDoor } from '../support/pressEveryDoor';
import { begin, openSitting, type SittingOptions, write } from './driver';

interface Job {
  readonly sitting: SittingOptions;
  /** Written in the line first: what some forms show only once it has been done. Not counted. */
  readonly written: readonly string[];
  /** How the names of what is opened begin; nothing for all. */
  readonly from: readonly string[];
}

const JOBS: readonly Job[] = [
  {
    sitting: { scenario: 'the-rear-unit' },
    written: [
      'cover port-a off',
      'cap port-a off',
      'couple gauge-low port-a firewall,corner-rear,fender,mat',
    ],
    from: [],
  },
  { sitting: { scenario: 'from-twelve' }, written: [], from: ['Gauge set', 'Conversion kit'] },
  {
    sitting: { scenario: 'the-wrong-can', mode: 'practice' },
    written: ['pit in', 'heater on'],
    from: ['Can 1', 'Charging hose', 'Parts,', 'Look closer: compressor', 'Hint', 'Finish the job'],
  },
];

/** The job's own door is gone through before anything is pressed; no place of a built-in job has a pit or a heater. */
const NOT_PRESSED: readonly string[] = ['begin', 'pit', 'heater'];

test('every command has a door with a role and a name', { timeout: 480_000 }, async () => {
  const doors: Door[] = [];
  for (const { sitting, written, from } of JOBS) {
    const { page } = await openSitting({ ...sitting, before: listenToCommands });
    await begin(page);
    for (const line of written) await write(page, line);
    await page.evaluate(pressEveryDoor, from);
    doors.push(...(await page.evaluate(() => window.heardDoors.doors)));
    await page.close();
  }
  const pressed = doors.filter(({ role }) => role !== '');
  expect(pressed.filter(({ name }) => name === '')).toEqual([]);
  const reached = new Set([...NOT_PRESSED, ...pressed.map(({ command }) => command)]);
  expect(NOT_PRESSED.filter((id) => doors.every(({ command }) => command !== id))).toEqual([]);
  expect((Object.keys(commandSpecs) as CommandId[]).filter((id) => !reached.has(id))).toEqual([]);
});
