/**
 * `prove FILE...`: whether a scenario can be solved, cannot be passed by luck, can be told from its look-alikes, and is even
 * over its seeds; as a text, as JSON, or as a page. What was reckoned before is kept.
 */
import { findingText } from '../../export/proof/findingText';
import { proofMarkup } from '../../export/proof/proofMarkup';
import { proofSheet } from '../../export/proof/proofSheet';
import { sheetText } from '../../export/proof/sheetText';
import { type LibraryLuck, libraryLuck, luckFindings } from '../../prover/libraryLuck';
import type { Proof, ProofFinding } from '../../prover/proof';
import { proverHash } from '../../prover/proverHash';
import { word } from '../../words/words';
import { jobCache, noCache } from '../prove/jobCache';
import { jobRunner } from '../prove/jobRunner';
import { libraryText } from '../prove/libraryText';
import { progressNotes } from '../prove/progressNotes';
import { requestOf, type ToProve, threadsOf, toProve } from '../prove/proveArguments';
import { proveEach } from '../prove/proveEach';
import { defineVerb } from '../verb';

export default defineVerb({
  name: 'prove',
  summary: 'prove.verb.summary',
  options: {
    seeds: { kind: 'text', example: '20', summary: 'prove.verb.seeds' },
    full: { kind: 'flag', summary: 'prove.verb.full' },
    library: { kind: 'flag', summary: 'prove.verb.library' },
    threads: { kind: 'text', example: '2', summary: 'prove.verb.threads' },
    'no-cache': { kind: 'flag', summary: 'prove.verb.noCache' },
    page: { kind: 'text', example: 'proof.html', summary: 'prove.verb.page' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  operands: [{ name: 'FILE', required: false, many: true }],
  async run({ options, operands }, io) {
    const { library } = options;
    const asked = toProve(operands, library, io);
    const request = requestOf(options.seeds, options.full, library);
    const threads = threadsOf(options.threads);
    const runner = jobRunner(threads);
    const cache = options['no-cache'] ? noCache : jobCache(proverHash);
    try {
      const prover = { runner, cache, ...progressNotes(io) };
      const proofs = await proveEach(asked, request, prover, threads);
      const luck = library ? libraryLuck(proofs) : null;
      if (options.json) io.json(printed(asked, proofs, luck));
      else io.text(luck === null ? proofs.map(asText(asked)).join('\n') : libraryText(proofs, luck));
      // last, so that where it cannot be written what was found is told all the same
      if (options.page !== undefined) io.writeFile(options.page, proofMarkup(proofs));
      const refused = proofs.some(({ verdict }) => verdict === 'refused');
      return refused || luckFindings(luck ?? []).length > 0 ? 1 : 0;
    } finally {
      await runner.close();
    }
  },
});

/** Findings with their place and sentence, so that whoever reads it needs no words of ours. */
function printed(asked: readonly ToProve[], proofs: readonly Proof[], luck: readonly LibraryLuck[] | null) {
  const told = (place: ToProve['at']) => (finding: ProofFinding) => ({
    at: place(finding.path),
    ...finding,
    message: findingText(finding),
  });
  return {
    proofs: proofs.map((proof, at) => ({ ...proof, findings: proof.findings.map(told(asked[at].at)) })),
    ...(luck === null ? {} : { luck, findings: luckFindings(luck).map(told(() => 'library')) }),
  };
}

/** What has a place in a file stands before the sheet, as `check` has it. */
const asText =
  (asked: readonly ToProve[]) =>
  (proof: Proof, at: number): string => {
    const places = asked[at].isFile ? proof.findings : [];
    const lines = places.map((finding) => {
      const { code, path } = finding;
      return word('prove.verb.at', { at: asked[at].at(path), code, message: findingText(finding) });
    });
    return [...lines, sheetText(proofSheet(proof))].join('\n');
  };
