/** Caps and covers as they were found: of ports the car has, each once, and covers only where there is one. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { Layout } from '../../layout/layout';
import { word } from '../../words/words';
import type { Findings } from './findings';

export function checkFound({ found }: ScenarioData, { ports }: Layout, findings: Findings): void {
  const covered = ports.filter(({ cover }) => cover !== undefined).map(({ id }) => id);
  const known = { caps: ports.map(({ id }) => id), covers: covered };
  for (const list of ['caps', 'covers'] as const) {
    const named = (found?.[list] ?? []).map(({ port }) => port);
    named.forEach((port, at) => {
      const path = ['found', list, at, 'port'];
      if (named.indexOf(port) < at) findings.error(path, 'SCN122', word('check.twice', { id: port }));
      if (known[list].includes(port)) return;
      const none = list === 'caps' ? 'check.noPort' : 'check.noCover';
      findings.unknown(path, 'SCN126', word(none, { id: port }), port, known[list]);
    });
  }
}
