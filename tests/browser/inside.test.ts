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
  await page.waitForSelector('[data-point="4"]');
  expect(await page.locator('.phd .cycle-healthy').getAttribute('d')).toMatch(/^M[-\d.]+,[-\d.]+L/);
  const { ids, values } = await page.evaluate(() => (window as unknown as { kept: LastFrame }).kept);
  const of = (id: string): number => values[ids.indexOf(id)];
  for (const point of [1, 2, 3, 4]) {
    const [pressure, enthalpy] = [of(`point${point}.pressurePa`), of(`point${point}.enthalpyJPerKg`)];
    expect(enthalpy).toBeGreaterThan(150_000);
    const drawn = await page.locator(`[data-point="${point}"]`).getAttribute('transform');
    expect(drawn).toBe(`translate(${phX(enthalpy)} ${phY(pressure)})`);
    const number = await page.locator(`[data-enthalpy="${point}"]`).textContent();
    expect(number).toBe(`${(enthalpy / 1000).toFixed(1)} kJ/kg`);
  }
});
