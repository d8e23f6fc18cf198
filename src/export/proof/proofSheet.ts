/**
 * The proof of a scenario as a page for its instructor: the verdict first, in plain words, then who can solve it, what luck
 * passes, suspects against tests, how even it is over its seeds, what it is worth, and what was left out.
 */
import type { Proof, ProofFinding } from '../../prover/proof';
import { type WriteQuantity, writeMetric } from '../../session/writeQuantity';
import { word } from '../../words/words';
import { type Leaf, leaf, list } from '../card/leaf';
import { findingText } from './findingText';
import { apartSections } from './sections/apartSections';
import { fairSection } from './sections/fairSection';
import { leftSection } from './sections/leftSection';
import { luckSection } from './sections/luckSection';
import { solveSection } from './sections/solveSection';
import { worthSection } from './sections/worthSection';
import { named } from './written';

/** Readings as `write` has them; kPa and °C when nothing is given. */
export function proofSheet(proof: Proof, write: WriteQuantity = writeMetric): Leaf {
  return leaf(
    'article',
    'sheet proof',
    head(proof),
    solveSection(proof),
    luckSection(proof),
    ...apartSections(proof, write),
    fairSection(proof),
    ...worthSection(proof),
    leftSection(proof),
    foot(proof),
  );
}

function head({ scenario, title, request, verdict, findings }: Proof): Leaf {
  const [errors, warnings] = (['error', 'warning'] as const).map((level) =>
    findings.filter((finding) => finding.level === level),
  );
  const holds = verdict === 'holds';
  return leaf(
    'header',
    `verdict ${verdict}`,
    leaf('h1', '', word('prove.title', { title })),
    leaf('p', 'small', word('prove.sub', { id: scenario, seeds: String(request.seeds) })),
    leaf(
      'p',
      'answer',
      leaf('b', '', holds ? word('prove.holds') : word('prove.refused')),
      ` ${holds ? word('prove.holdsText') : word('prove.refusedText')}`,
    ),
    ...found(errors),
    ...(warnings.length > 0 ? [leaf('p', 'small', word('prove.warnings')), ...found(warnings)] : []),
  );
}

const found = (findings: readonly ProofFinding[]): Leaf[] =>
  findings.length === 0
    ? []
    : [
        list(
          'found',
          findings.map((finding) => `${finding.code} ${findingText(finding)}${helpText(finding)}`),
        ),
      ];

/** What an author can do about it. */
function helpText({ code }: ProofFinding): string {
  const how = named(`prove.help.${code}`, '');
  return how === '' ? '' : ` ${word('prove.helps', { how })}`;
}

function foot({ apart, scenarioHash, engineHash }: Proof): Leaf {
  return leaf(
    'footer',
    '',
    word('prove.foot', {
      suspects: String(apart?.rows.length ?? 0),
      scenario: scenarioHash,
      program: engineHash,
    }),
  );
}
