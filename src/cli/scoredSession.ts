/** A session that was played, as the verbs print it: scored out of its own record, with hashes. */
import { DOMAINS } from '../../shared/schema/domains';
import { sayFinding } from '../scoring/sayFinding';
import { type Score, score } from '../scoring/score';
import { STEPS_PER_MINUTE } from '../session/clock';
import type { SessionCore } from '../session/corePort';
import { engineHash } from '../session/engineHash';
import { recordOf } from '../session/openSession';
import type { Scenario } from '../session/scenario/scenario';
import type { SessionFile } from '../session/sessionFile';

export interface ScoredSession {
  readonly printed: PrintedScore;
  readonly file: SessionFile;
}

export interface PrintedScore {
  readonly score: number;
  readonly reported: number;
  readonly passed: boolean;
  readonly domains: Readonly<Record<string, number>>;
  readonly critical: readonly string[];
  readonly findings: readonly {
    readonly rule: string;
    readonly step: number;
    readonly severity: string | null;
    readonly sentence: string;
  }[];
  readonly logHash: string;
  readonly stateHash: string;
  readonly minutes: number;
}

export function scoredSession(scenario: Scenario, core: SessionCore): ScoredSession {
  const log = core.log();
  const scored = score(recordOf(scenario, log), scenario);
  core.markScored();
  const hashes = { logHash: core.logHash(), stateHash: core.stateHash() };
  const { score: points, reported } = scored;
  return {
    printed: { ...printedScore(scored), ...hashes, minutes: log.lastStep / STEPS_PER_MINUTE },
    file: { log, last: { score: points, reported, ...hashes, engineHash } },
  };
}

export function printedScore(scored: Score): Omit<PrintedScore, 'logHash' | 'stateHash' | 'minutes'> {
  const tenth = (value: number): number => Math.round(10 * value) / 10;
  return {
    score: scored.score,
    reported: scored.reported,
    passed: scored.passed,
    domains: Object.fromEntries(DOMAINS.map((domain) => [domain, tenth(scored.domains[domain].earned)])),
    critical: scored.critical,
    findings: scored.findings.map((finding) => ({
      rule: finding.rule,
      step: finding.step,
      severity: finding.severity,
      sentence: sayFinding(finding),
    })),
  };
}
