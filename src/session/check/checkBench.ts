/** What lies on the bench: nothing twice, no can under the name of something else, none fuller than it says. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { parseQuantity } from '../../units/quantity';
import { word } from '../../words/words';
import type { Findings } from './findings';

/** `taken` are ids that hoses, ports and devices have. */
export function checkBench({ bench }: ScenarioData, taken: readonly string[], findings: Findings): void {
  for (const list of ['hoses', 'tools'] as const) {
    const ids: readonly string[] = bench[list] ?? [];
    ids.forEach((id, at) => {
      if (ids.indexOf(id) < at) findings.error(['bench', list, at], 'SCN122', word('check.onceOnly', { id }));
    });
  }
  bench.cans.forEach(({ id, net, printed }, at) => {
    const path = ['bench', 'cans', at];
    if (bench.cans.findIndex((can) => can.id === id) < at)
      findings.error([...path, 'id'], 'SCN122', word('check.twice', { id }));
    if (taken.includes(id)) findings.error([...path, 'id'], 'SCN123', word('check.canName', { id }));
    if (parseQuantity(net, 'mass') > parseQuantity(printed, 'mass'))
      findings.error([...path, 'net'], 'SCN125', word('check.canOverfull', { net, printed }));
  });
}
