/**
 * score(record, rubric): pure. A domain earns its weight times the share of points earned; a serious fault in it caps
 * that at a half. Three of one minor fault are serious, and each takes a third of the rule's points. A critical fault
 * means not passed, and the reported score is held one below the mark, because whoever reads only the number would else
 * call it passed. So does a gate that is seriously broken: a wrong answer to what the job asked, or one given before
 * anything was read, costs no more than half of two domains, and a tidy guess would pass.
 */
import { DOMAINS, type Domain } from '../../shared/schema/domains';
import type { Rule, Severity } from '../../shared/schema/rubric';
import type { SessionRecord } from '../session/record/record';
import { compileRule, type Status, type Verdict } from './compileRule';
import { type Evidence, quoteRow } from './evidence';
import { PASS_MARK } from './passMark';
import { rowMoments } from './rowMoments';

const MINORS_THAT_ARE_SERIOUS = 3;
const SERIOUS_CAP = 0.5;
const HALF_REACHED = 0.5;

export interface ScoringRubric {
  readonly rules: readonly Rule[];
  readonly weights: Readonly<Record<Domain, number>>;
}

export interface Finding {
  readonly rule: string;
  readonly domain: Domain;
  readonly status: Status;
  /** Null where nothing was broken. */
  readonly severity: Severity | null;
  readonly times: number;
  /** Points of the rule, before the domain's weight; none to be had where it is no question here. */
  readonly earned: number;
  readonly possible: number;
  readonly row: number;
  readonly step: number;
  readonly evidence: readonly Evidence[];
  readonly references: readonly string[];
  readonly tasks: readonly string[];
}

export interface DomainScore {
  readonly earned: number;
  readonly possible: number;
  readonly capped: boolean;
}

export interface Score {
  /** 0 to 100, a decimal. */
  readonly score: number;
  readonly reported: number;
  readonly passed: boolean;
  readonly domains: Readonly<Record<Domain, DomainScore>>;
  readonly critical: readonly string[];
  /** Gates that stayed shut: rules of what the job is about, seriously broken. */
  readonly gates: readonly string[];
  readonly findings: readonly Finding[];
  /** Whether what the readings said about the cause was weighed with ghost cars. */
  readonly weighed: boolean;
}

export function score(record: SessionRecord, { rules, weights }: ScoringRubric): Score {
  const rows = rowMoments(record);
  const findings = rules.map((rule) => findingOf(record, rule, compileRule(rule, record)(record, rows)));
  const domains = Object.fromEntries(
    DOMAINS.map((domain) => [domain, domainScore(findings, domain, weights[domain])]),
  ) as Record<Domain, DomainScore>;
  const total = DOMAINS.reduce((sum, domain) => sum + domains[domain].earned, 0);
  const critical = findings.filter(({ severity }) => severity === 'critical').map(({ rule }) => rule);
  const shut = rules.filter(({ gate }, at) => gate === true && isShut(findings[at])).map(({ id }) => id);
  const rounded = Math.round(10 * total) / 10;
  const mayPass = critical.length === 0 && shut.length === 0;
  return {
    score: rounded,
    reported: mayPass ? rounded : Math.min(rounded, PASS_MARK - 1),
    passed: mayPass && rounded >= PASS_MARK,
    domains,
    critical,
    gates: shut,
    findings,
    weighed: !Number.isNaN(record.measures['diagnosis.justified']),
  };
}

const isShut = ({ severity }: Finding): boolean => severity === 'serious' || severity === 'critical';

function findingOf(record: SessionRecord, rule: Rule, verdict: Verdict): Finding {
  const { status, times, row } = verdict;
  return {
    rule: rule.id,
    domain: rule.domain,
    status,
    severity: status === 'broken' ? severityOf(rule, verdict) : null,
    times,
    earned: rule.points * shareOf(rule, verdict),
    possible: verdict.counts ? rule.points : 0,
    row,
    step: record.steps[row],
    evidence: quoteRow(record, rule, row),
    references: rule.references,
    tasks: rule.tasks ?? [],
  };
}

function shareOf(rule: Rule, { status, share, times }: Verdict): number {
  const isMinor = status === 'broken' && 'never' in rule && rule.severity === 'minor';
  return isMinor ? Math.max(0, 1 - times / MINORS_THAT_ARE_SERIOUS) : share;
}

/** An outcome that is at least half reached only loses points; under that it weighs as its severity says. */
function severityOf(rule: Rule, { share, times }: Verdict): Severity {
  if ('outcome' in rule && share >= HALF_REACHED) return 'minor';
  if (rule.severity === 'minor' && times >= MINORS_THAT_ARE_SERIOUS) return 'serious';
  return rule.severity;
}

function domainScore(findings: readonly Finding[], domain: Domain, weight: number): DomainScore {
  const own = findings.filter((finding) => finding.domain === domain);
  const possible = own.reduce((sum, finding) => sum + finding.possible, 0);
  const share = possible === 0 ? 0 : own.reduce((sum, finding) => sum + finding.earned, 0) / possible;
  const capped = own.some(({ severity }) => severity === 'serious');
  return { earned: weight * (capped ? Math.min(share, SERIOUS_CAP) : share), possible: weight, capped };
}
