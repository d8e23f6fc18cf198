/** A session that was played, as the verbs print it: scored out of its own record, with hashes. */
import { DOMAINS } from '../../shared/schema/domains';
import { sayFinding } from '../scoring/sayFinding';
import type { Score } from '../scoring/score';
import { scoreOf } from '../scoring/scoreOf';
import { STEPS_PER_MINUTE } from '../session/clock';
import type { Mode, SessionCore } from '../session/corePort';
import { engineHash } from '../session/engineHash';
import type { SessionRecord } from '../session/record/record';
import { recordOf } from '../session/recordOf';
import type { Scenario } from '../session/scenario/scenario';
import type { SessionFile } from '../session/sessionFileText';

export interface ScoredSession {
  readonly printed: PrintedScore;
  readonly file: SessionFile;
}

export interface PrintedScore {
  readonly score: number;
  readonly reported: number;
  readonly passed: boolean;
  /** A score of practice was made with hints and going back at hand. */
  readonly mode: Mode;
  readonly hints: number;
  readonly weighed: boolean;
  readonly domains: Readonly<Record<string, number>>;
  readonly critical: readonly string[];
  readonly gates: readonly string[];
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

/** `weighed`: with what ghost cars say of the readings, which takes some seconds. Without a `record` the log is run again. */
export function scoredSession(
  scenario: Scenario,
  core: SessionCore,
  weighed = false,
  record: SessionRecord = recordOf(scenario, core.log()),
): ScoredSession {
  const log = core.log();
  const scored = scoreOf(record, scenario, weighed);
  core.markScored();
  const hashes = { logHash: core.logHash(), stateHash: core.stateHash() };
  const { score: points, reported } = scored;
  return {
    printed: {
      ...printedScore(scored),
      mode: log.mode,
      hints: core.view().hints.opened,
      ...hashes,
      minutes: log.lastStep / STEPS_PER_MINUTE,
    },
    file: {
      log,
      last: {
        score: points,
        reported,
        ...hashes,
        engineHash,
        ...(scored.weighed ? { weighed: true } : {}),
      },
    },
  };
}

export function printedScore(
  scored: Score,
): Omit<PrintedScore, 'mode' | 'hints' | 'logHash' | 'stateHash' | 'minutes'> {
  const tenth = (value: number): number => Math.round(10 * value) / 10;
  return {
    score: scored.score,
    reported: scored.reported,
    passed: scored.passed,
    weighed: scored.weighed,
    domains: Object.fromEntries(DOMAINS.map((domain) => [domain, tenth(scored.domains[domain].earned)])),
    critical: scored.critical,
    gates: scored.gates,
    findings: scored.findings.map((finding) => ({
      rule: finding.rule,
      step: finding.step,
      severity: finding.severity,
      sentence: sayFinding(finding),
    })),
  };
}
