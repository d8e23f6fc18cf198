import { expect, test } from 'vitest';
import { phX, phY } from '../../src/instruments/phGeometry';
import { begin, openSitting, runOn, write } from './driver';

interface LastFrame {
  readonly ids: readonly string[];
  readonly values: readonly number[];
}

const COUPLED = [
  'wear goggles',
  'cap port-a off',
  'couple gauge-low port-a side-middle,fender,mat',
  'coupler gauge-low open',
  'cap port-b off',
  'couple gauge-high port-b corner-front,fender,mat',
  'coupler gauge-high open',
];

/** Keeps the last frame the worker sent, by channel. */
function keepLastFrame(): void {
  const kept: { ids: string[]; values: number[] } = { ids: [], values: [] };
  const Plain = window.Worker;
  window.Worker = class extends Plain {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      this.addEventListener('message', ({ data }) => {
        if (data.channels) kept.ids = data.channels.map(({ id }: { id: string }) => id);
        if (data.frame) kept.values = [...data.frame];
      });
    }
  };
  Object.assign(window, { kept });
}

test('the state points of see-inside stand at the pressure and enthalpy of the frame', async () => {
  const { page } = await openSitting({
    scenario: 'warm-at-the-lights',
    mode: 'practice',
    before: keepLastFrame,
  });
  await begin(page);
  for (const line of COUPLED) await write(page, line);
  for (const line of ['door open', 'windows open', 'blower 4', 'engine 900', 'ac on'])
    await write(page, line);
  await runOn(page, '1 min');
  // both gauges of the set have brackets and say what they are worth; the charging hose's has none
  expect(await page.locator('.lad .g-br').count()).toBe(2);
  const told = await page.locator('.lad .lw').allTextContents();
  const bracketed = /healthy car: [\d,]+ to [\d,]+ psi; inside does not mean full/;
  expect(told.map((words) => bracketed.test(words))).toEqual([true, true, false]);
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.getByRole('button', { name: 'See inside' }).click();
  await page.waitForSelector('.phd [data-spot="p4"]');
  expect(await page.locator('.phd .cycle-healthy').getAttribute('d')).toMatch(/^M[-\d.]+,[-\d.]+L/);
  const { ids, values } = await page.evaluate(() => (window as unknown as { kept: LastFrame }).kept);
  const of = (id: string): number => values[ids.indexOf(id)];
  for (const point of [1, 2, 3, 4]) {
    const [pressure, enthalpy] = [of(`point${point}.pressurePa`), of(`point${point}.enthalpyJPerKg`)];
    expect(enthalpy).toBeGreaterThan(150_000);
    const drawn = await page.locator(`.phd [data-spot="p${point}"]`).getAttribute('transform');
    expect(drawn).toBe(`translate(${phX(enthalpy)} ${phY(pressure)})`);
    const number = await page.locator(`[data-enthalpy="${point}"]`).textContent();
    expect(number).toBe(`${(enthalpy / 1000).toFixed(1)} kJ/kg`);
  }

  // a point pressed in one picture is shown in the other, in the table and in words
  await page.locator('.phd [data-spot="p3"]').press('Enter');
  expect(await page.locator('.loopd .spot.on').getAttribute('data-spot')).toBe('p3');
  expect(await page.locator('.st4 tr.on').textContent()).toContain('into the metering device');
  expect(await page.locator('.say2 [role="status"]').textContent()).toMatch(
    /^3, into the metering device: \d+ psi/,
  );
  await page.keyboard.press('ArrowRight');
  expect(await page.locator('.phd .spot:focus').getAttribute('data-spot')).toBe('metering');
  expect(await page.locator('.say2 [role="status"]').textContent()).toContain(
    'pressure falls, the heat stays',
  );
  await page.locator('.loopd [data-spot="evaporator"]').press(' ');
  expect(await page.locator('.phd .spot.on').getAttribute('data-spot')).toBe('evaporator');
  await page.locator('.loopd [data-spot="evaporator"]').press(' ');
  expect(await page.locator('.spot.on').count()).toBe(0);
  // point 4 has the heat of point 3, point 1 is what the compressor draws
  expect(of('point4.enthalpyJPerKg')).toBe(of('point3.enthalpyJPerKg'));
  // arrows go along the loop while the clock runs, and are the same ones from frame to frame
  const arrow = await page.locator('.flow-arrow').first().elementHandle();
  const stood = await arrow?.getAttribute('transform');
  await page.getByRole('radio', { name: '×1', exact: true }).click();
  await page.waitForFunction(
    ([one, before]) => one?.isConnected && one.getAttribute('transform') !== before,
    [arrow, stood] as const,
  );
  // the places of the cutaway stand in a table too
  await page.getByRole('radio', { name: 'Table' }).click();
  const places = await page.locator('.places tbody th').allTextContents();
  expect(places).toEqual([
    'suction line',
    'discharge line',
    'condenser',
    'accumulator',
    'liquid line',
    'evaporator',
  ]);
});

test('what was done in the last minutes stands on the strips, in words and in a table', async () => {
  const { page } = await openSitting({ scenario: 'warm-at-the-lights', mode: 'practice' });
  await begin(page);
  for (const line of [...COUPLED.slice(0, 4), 'door open', 'blower 4', 'engine 900', 'ac on'])
    await write(page, line);
  await runOn(page, '1 min');
  expect((await page.locator('.heard li').allTextContents()).join(' ')).toMatch(/^Running: engine/);
  await page.getByRole('button', { name: 'Drawn bay' }).click();
  await page.getByRole('button', { name: 'Last ten minutes' }).click();
  await page.locator('.lane-list li').first().waitFor();
  const list = await page.locator('.lane-list li').allTextContents();
  expect(list.slice(0, 3).map((row) => row.replace(/^\d\d\d:\d\d|^\d+ ?\d\d:\d\d/, ''))).toEqual([
    'The coupler snapped on.',
    'The coupler is open: the gauge sees the car.',
    'The engine runs.',
  ]);
  expect(list.some((row) => /Clicks of the clutch: \d+/.test(row))).toBe(true);
  expect(await page.locator('.lane').count()).toBe(3);
  await page.getByRole('dialog').getByRole('radio', { name: 'Table' }).click();
  const rows = await page.locator('.lane-table tbody tr').allTextContents();
  expect(rows.some((row) => row.startsWith('01:00') && row.includes('psi'))).toBe(true);
});

/** Counts the audio contexts that are opened, with sounds asked for. */
function listenIn(): void {
  localStorage.setItem('portside-settings', JSON.stringify({ bay: 'words', sound: 'medium' }));
  const opened: AudioContext[] = [];
  const Plain = window.AudioContext;
  window.AudioContext = class extends Plain {
    constructor() {
      super();
      opened.push(this);
    }
  };
  Object.assign(window, { opened });
}

test('sounds that were asked for begin with the first press, and every one stands in words', async () => {
  const { page } = await openSitting({
    scenario: 'warm-at-the-lights',
    mode: 'practice',
    before: listenIn,
  });
  const contexts = (): Promise<string[]> =>
    page.evaluate(() => (window as unknown as { opened: AudioContext[] }).opened.map(({ state }) => state));
  expect(await contexts()).toEqual([]);
  await begin(page);
  for (const line of ['door open', 'blower 4', 'engine 900']) await write(page, line);
  await runOn(page, '10 s');
  expect((await contexts()).length).toBe(1);
  expect(await page.locator('.heard li').allTextContents()).toContain('Running: engine, blower');
});
