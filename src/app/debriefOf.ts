/** The debrief out of a finished session: its log run again into a record, scored, and laid out as plain data. */

import { type DebriefData, type DebriefFinding, TRIPS } from '../panels/debriefModel';
import { gateReasons } from '../scoring/gateReasons';
import { PASS_MARK } from '../scoring/passMark';
import { type Finding, type Score, score } from '../scoring/score';
import { isWeighable, type Weighed } from '../scoring/weigh';
import { canonicalJson } from '../session/canonicalJson';
import type { SessionCore, SessionLog } from '../session/corePort';
import { engineHash } from '../session/engineHash';
import { ruleOfPlace } from '../session/law/ruleOfPlace';
import { measureList } from '../session/record/measures';
import { type SessionRecord, valueAt } from '../session/record/record';
import { recordOf } from '../session/recordOf';
import type { Scenario } from '../session/scenario/scenario';
import { numberedCommands } from '../session/whatIf/editLog';
import { pointsOf, tracesOf } from './traces';

function kindOf(finding: Finding): DebriefFinding['kind'] {
  if (finding.status === 'idle' || finding.status === 'advised') return finding.status;
  if (finding.severity === 'critical') return 'critical';
  if (finding.earned >= finding.possible) return 'all';
  return finding.earned > 0 ? 'part' : 'none';
}

function findingsOf(
  scored: Score,
  { data }: Scenario,
  { actions }: SessionRecord,
  numbers: readonly number[],
): DebriefFinding[] {
  return scored.findings.map((finding) => {
    const at = actions.findIndex(({ row }) => row === finding.row);
    return {
      ...finding,
      kind: kindOf(finding),
      law: ruleOfPlace(finding.rule, data),
      deed: at < 0 ? null : numbers[at],
    };
  });
}

/** Measures that only ghosts can fill in, as they filled them. */
function weighedOf(weighed: Weighed | null): DebriefData['weighed'] {
  if (weighed === null) return null;
  const { measures } = weighed.record;
  const own = measureList.filter(({ weighed: byGhosts }) => byGhosts);
  return Object.fromEntries(own.map(({ id }) => [id, measures[id]]));
}

/** Happenings that nobody wants, whether a rule counts them or not, by how often. */
function tripsOf({ events }: SessionRecord): DebriefData['trips'] {
  return TRIPS.flatMap((id) => {
    const own = events.filter((event) => event.id === id);
    return own.length === 0 ? [] : [{ id, count: own.length, firstStep: own[0].step }];
  });
}

/** Whether ghost cars are still to weigh what the readings said: of a scored job that is over, and holds anything. */
export function isToBeWeighed(scenario: Scenario, core: SessionCore): boolean {
  const isOver = core.view().phase === 'debrief' && core.mode !== 'explore';
  return isOver && isWeighable(scenario);
}

interface Hashes {
  readonly logHash: string;
  readonly stateHash: string;
  readonly engineHash: string;
}

const hashesOf = (core: SessionCore): Hashes => ({
  logHash: core.logHash(),
  stateHash: core.stateHash(),
  engineHash,
});

function fileText(log: SessionLog, scored: Score, hashes: Hashes): string {
  const isWeighed = scored.weighed ? { weighed: true } : {};
  const last = { score: scored.score, reported: scored.reported, ...hashes, ...isWeighed };
  return canonicalJson({ log, last });
}

/** The session file of a job that may still go on. */
export function sessionFileOf(scenario: Scenario, core: SessionCore): string {
  const log = core.log();
  return fileText(log, score(recordOf(scenario, log), scenario), hashesOf(core));
}

/** As soon as the log has run again; and once more when the ghosts have weighed it, which takes some seconds. */
export function makeDebrief(
  scenario: Scenario,
  core: SessionCore,
  record: SessionRecord = recordOf(scenario, core.log()),
  weighed: Weighed | null = null,
): DebriefData {
  const log = core.log();
  const numbers = numberedCommands(log).map(({ number }) => number);
  const scored = score(weighed?.record ?? record, scenario);
  if (core.view().phase === 'debrief') core.markScored();
  const hashes = hashesOf(core);
  return {
    mode: log.mode,
    seed: log.seed,
    scored: log.mode !== 'explore',
    score: scored.score,
    reported: scored.reported,
    passed: scored.passed,
    passMark: PASS_MARK,
    domains: Object.entries(scored.domains).map(([id, { earned, possible }]) => ({ id, earned, possible })),
    criticalCount: scored.critical.length,
    gates: gateReasons(scored, record, scenario),
    findings: findingsOf(scored, scenario, record, numbers),
    weighed: weighedOf(weighed),
    suspects: weighed?.story ?? null,
    isWeighing: weighed === null && isToBeWeighed(scenario, core),
    trips: tripsOf(record),
    wentBack: record.wentBack,
    hintsOpened: core.view().hints.opened,
    actions: record.actions.map(({ number, step, command }, at) => ({
      number,
      logNumber: numbers[at],
      step,
      command,
    })),
    traces: tracesOf(record),
    points: pointsOf(record),
    labelKg: valueAt(record, 0, 'label.massKg'),
    lastStep: record.lastStep,
    ...hashes,
    debriefText: scenario.data.debrief,
    file: fileText(log, scored, hashes),
  };
}

const NO_POINTS = { seconds: new Float64Array(0), values: new Float64Array(0) };

/** Of an assessed job that is not handed over, only the file to save: no score, no evidence, no truth. */
export function tellable(debrief: DebriefData, core: SessionCore): DebriefData {
  if (core.mode !== 'assessed' || core.view().phase === 'debrief') return debrief;
  const nothing = { score: 0, reported: 0, passed: false, criticalCount: 0, gates: [] };
  return {
    ...debrief,
    ...nothing,
    domains: [],
    findings: [],
    suspects: null,
    isWeighing: false,
    trips: [],
    actions: [],
    traces: [],
    points: NO_POINTS,
  };
}
