/**
 * How long a session takes to open in the built page, nothing cached, as it is and with the page's processor four times
 * as slow (its worker runs beside it as it is): until the job can be begun, then until hands can work in the drawn bay.
 */
import { builtPage } from './builtPage';

const ADDRESS = '?scenario=click-click&mode=practice&seed=1&lapse=1';
const SLOW = 4;

export function opening(): Promise<Record<string, number>> {
  return builtPage(async (newPage, address) => {
    const figures: Record<string, number> = {};
    for (const rate of [1, SLOW]) {
      const page = await newPage();
      const cdp = await page.context().newCDPSession(page);
      await cdp.send('Emulation.setCPUThrottlingRate', { rate });
      const at = rate === 1 ? '' : `, ${rate} x slower`;
      const start = performance.now();
      await page.goto(`${address}${ADDRESS}`);
      await page.waitForSelector('.brief .btn.pri');
      const opened = performance.now();
      await page.locator('.brief .btn.pri').press('Enter');
      await page.waitForSelector('.bay-twin [data-target="coupler:low"]');
      figures[`address to briefing${at}, s`] = (opened - start) / 1000;
      figures[`begin to bay${at}, s`] = (performance.now() - opened) / 1000;
      await page.context().close();
    }
    return figures;
  });
}
