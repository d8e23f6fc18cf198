/** What a seed varies: each thing once, from the lower end to the upper, round about the day that is told. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { parseQuantity } from '../../units/quantity';
import { word } from '../../words/words';
import type { Findings } from './findings';

export function checkVaries({ varies = [], weather }: ScenarioData, findings: Findings): void {
  varies.forEach(({ what, from, to }, at) => {
    const kind = what === 'temperature' ? 'temperature' : 'ratio';
    const [low, told, high] = [from, weather[what], to].map((text) => parseQuantity(text, kind));
    if (varies.findIndex((one) => one.what === what) < at)
      findings.error(['varies', at, 'what'], 'SCN122', word('check.onceOnly', { id: what }));
    if (low > high) findings.error(['varies', at, 'from'], 'SCN127', word('check.reversed', { from, to }));
    else if (told < low || told > high)
      findings.warning(
        ['varies', at],
        'SCN218',
        word('check.otherDay', { what, told: weather[what], from, to }),
      );
  });
}
