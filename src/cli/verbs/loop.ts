/** `loop`: one car's refrigerant loop, run for some minutes without a bench; or many, one JSON line each. */
import { type LoopRun, runLoop } from '../../plant/runLoop';
import { say } from '../../words/words';
import { readCases } from '../loop/readCases';
import { CASE_KEYS, type LoopCase, readLoopCase } from '../loop/readLoopCase';
import { saturatedOnly } from '../loop/saturatedOnly';
import { traceLoop } from '../loop/traceLoop';
import { defineVerb, UsageError } from '../verb';

export default defineVerb({
  name: 'loop',
  summary: 'loop.summary',
  options: {
    vehicle: { kind: 'text', example: 'sedan', summary: 'loop.vehicle' },
    ambient: { kind: 'text', example: '"32 degC"', summary: 'loop.ambient' },
    humidity: { kind: 'text', example: '50%', summary: 'loop.humidity' },
    rpm: { kind: 'text', example: '1500', summary: 'loop.rpm' },
    minutes: { kind: 'text', example: '15', summary: 'loop.minutes' },
    cabin: { kind: 'text', example: 'open', summary: 'loop.cabin' },
    charge: { kind: 'text', example: '80%', summary: 'loop.charge' },
    refrigerant: { kind: 'text', example: 'R-12', summary: 'loop.refrigerant' },
    fault: { kind: 'text', many: true, example: 'ID=SEVERITY', summary: 'loop.fault' },
    engine: { kind: 'text', example: 'off', summary: 'loop.engine' },
    start: { kind: 'text', example: 'soaked', summary: 'loop.start' },
    average: { kind: 'text', example: '"5 min"', summary: 'loop.average' },
    trace: { kind: 'text', example: 'out.csv', summary: 'loop.trace' },
    cases: { kind: 'text', example: 'cases.jsonl', summary: 'loop.cases' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  run({ options }, io) {
    const { trace, cases, json: _json, ...written } = options;
    if (cases !== undefined) {
      refuseBesides(written, trace);
      for (const { given, run } of readCases(cases, io.readFile(cases)))
        io.line({ case: given, ...timed(run) });
      return 0;
    }
    const traced = trace === undefined ? undefined : traceLoop();
    const answer = timed(readLoopCase(written), traced?.eachSecond);
    if (trace !== undefined && traced) io.writeFile(trace, traced.csv());
    io.json(answer);
    return 0;
  },
});

/** A line of the cases file says all there is to a run. */
function refuseBesides(written: LoopCase, trace: string | undefined): void {
  if (trace !== undefined) throw new UsageError(say({ id: 'loop.casesNoTrace' }));
  const option = CASE_KEYS.find((key) => (written[key] ?? []).length > 0);
  if (option !== undefined) throw new UsageError(say({ id: 'loop.casesAlone', values: { option } }));
}

/** The answer with how many times faster than the clock it came. */
function timed(run: LoopRun, eachSecond?: Parameters<typeof runLoop>[1]): Record<string, unknown> {
  const start = process.hrtime.bigint();
  const { stateHash, ...result } = saturatedOnly(runLoop(run, eachSecond));
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  return { ...result, realTimeFactor: Math.round(run.durationS / seconds), stateHash };
}
