/** A library as text: each scenario with its verdict and what speaks against it, then what each habit passes. */
import { findingText } from '../../export/proof/findingText';
import { playerName } from '../../export/proof/written';
import { type LibraryLuck, luckFindings } from '../../prover/libraryLuck';
import type { Proof } from '../../prover/proof';
import { word } from '../../words/words';

export function libraryText(proofs: readonly Proof[], luck: readonly LibraryLuck[]): string {
  const held = proofs.filter(({ verdict }) => verdict === 'holds').length;
  const lines = [
    ...proofs.flatMap(({ scenario, verdict, findings }) => [
      word('prove.verb.line', {
        id: scenario,
        verdict: verdict === 'holds' ? word('prove.verdict.holds') : word('prove.verdict.refused'),
      }),
      ...findings.map((finding) => `  ${finding.code} ${findingText(finding)}`),
    ]),
    word('prove.library.held', { held: String(held), all: String(proofs.length) }),
    ...luck.map(({ player, passed, of }) =>
      word('prove.library.player', {
        player: playerName(player),
        passed: String(passed.length),
        of: String(of),
      }),
    ),
    ...luckFindings(luck).map((finding) => `${finding.code} ${findingText(finding)}`),
  ];
  return `${lines.join('\n')}\n`;
}
