/**
 * `drill`: bays of the port drill as data, a line each: question, choices, answer, the trace from the port to the part
 * that decides, and what somebody would say who does not trace. The same seed gives the same bytes.
 */
import { answerOf } from '../../layout/drill/answerOf';
import { DRILL_LEVELS, type DrillBay, type DrillLevel } from '../../layout/drill/drill';
import { drillBay } from '../../layout/drill/drillBay';
import { drillTrace } from '../../layout/drill/drillTrace';
import { lazyGuesses } from '../../layout/drill/lazyGuesses';
import { word } from '../../words/words';
import { defineVerb, UsageError } from '../verb';

export default defineVerb({
  name: 'drill',
  summary: 'drill.summary',
  options: {
    json: { kind: 'flag', summary: 'cli.json' },
    seed: { kind: 'text', summary: 'drill.seed', example: '1..5000' },
    level: { kind: 'text', summary: 'drill.level', example: '3' },
  },
  run({ options }, io) {
    const [first, last] = seedsOf(options.seed ?? '1');
    const level = options.level === undefined ? null : levelOf(options.level);
    for (let seed = first; seed <= last; seed++) io.line(asData(drillBay(seed, level ?? turnOf(seed))));
    return 0;
  },
});

/** Without a level they take turns. */
const turnOf = (seed: number): DrillLevel => (((seed - 1) % DRILL_LEVELS) + 1) as DrillLevel;

function asData(bay: DrillBay) {
  const { right, choices, port } = answerOf(bay);
  const { downstream, upstream } = drillTrace(bay, port);
  return {
    seed: bay.seed,
    level: bay.level,
    metering: bay.metering,
    engine: bay.engine,
    question: bay.question,
    choices,
    answer: right,
    port,
    trace: downstream,
    traceUpstream: upstream,
    lazy: lazyGuesses(bay),
    ports: bay.ports,
    covers: bay.covers.length,
    otherPipes: bay.decoys.map(({ kind }) => kind),
  };
}

const RANGE = /^([1-9]\d{0,8})(?:\.\.([1-9]\d{0,8}))?$/;

function seedsOf(given: string): readonly [first: number, last: number] {
  const match = RANGE.exec(given);
  const first = Number(match?.[1]);
  const last = Number(match?.[2] ?? match?.[1]);
  if (!match || last < first) throw new UsageError(word('drill.notSeed', { given }));
  return [first, last];
}

function levelOf(given: string): DrillLevel {
  const level = Number(given);
  if (!Number.isInteger(level) || level < 1 || level > DRILL_LEVELS)
    throw new UsageError(word('drill.notLevel', { given }));
  return level as DrillLevel;
}
