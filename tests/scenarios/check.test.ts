/** `check`: a slip is told where it stands, with what would be right. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../shared/schema/problem';
import { writerOf } from '../../src/instruments/evidenceUnits';
import { checkPlans } from '../../src/scoring/checkPlans';
import { checkScenario } from '../../src/scoring/checkScenario';
import { readScenario } from '../../src/scoring/readScenario';
import { checkPhysics } from '../../src/session/check/checkPhysics';
import { checkTeaching } from '../../src/session/check/checkTeaching';
import { scenarioById } from '../../src/session/scenario/library';
import { plantOptions } from '../../src/session/scenario/plantOptions';
import { rubrics } from '../../src/session/scenario/rubrics';
import { scenarioOf } from '../../src/session/scenario/scenario';
import type { WriteQuantity } from '../../src/session/writeQuantity';

const file = 'scenarios/warm-at-the-lights.yaml';
const text = readFileSync(file, 'utf8');
const checked = new Map<string, Problem[]>();
function check(changed: string): Problem[] {
  const found = checked.get(changed) ?? checkScenario(file, changed, rubrics);
  checked.set(changed, found);
  return found;
}
/** `file:line:` of the first place where `part` stands. */
const lineOf = (part: string): string => `${file}:${text.slice(0, text.indexOf(part)).split('\n').length}:`;

/** What is written, what it becomes, the code, and what the message has to say. */
const slips: readonly (readonly [was: string, is: string, code: string, says: string])[] = [
  ['title: Cold', 'titel: Cold', 'SCN001', 'did you mean "title"?'],
  ['level: 2', 'levle: 2', 'SCN001', 'did you mean "level"?'],
  ['complaint: On', 'complain: On', 'SCN001', 'did you mean "complaint"?'],
  ['weather: { temperature', 'weather: { temprature', 'SCN001', 'did you mean "temperature"?'],
  ['  history: Filled', '  histroy: Filled', 'SCN001', 'did you mean "history"?'],
  ['{ fault: condenser-fan-dead', '{ falut: condenser-fan-dead', 'SCN001', 'did you mean "fault"?'],
  ['severity: 1 }', 'sevrity: 1 }', 'SCN001', 'did you mean "severity"?'],
  ['  cans:', '  can:', 'SCN001', 'did you mean "cans"?'],
  ['net: 10 oz', 'nett: 10 oz', 'SCN001', 'did you mean "net"?'],
  ['  use: [service', '  uses: [service', 'SCN001', 'did you mean "use"?'],
  ['  solution:', '  solutoin:', 'SCN001', 'did you mean "solution"?'],
  ['32 degC, humidity', '32, humidity', 'SCN003', 'needs a unit'],
  ['32 degC, humidity', '32 degrees, humidity', 'SCN003', 'degC'],
  ['32 degC, humidity', '92 degC, humidity', 'SCN003', 'outside'],
  ['charge: 720 g', 'charge: 720 grams', 'SCN003', 'kg, g'],
  ['charge: 720 g', 'charge: 8.75 kg', 'SCN003', 'outside'],
  ['level: 2', 'level: 7', 'SCN003', '4'],
  ['level: 2', 'level: two', 'SCN003', 'number'],
  ['severity: 1 }', 'severity: 1.5 }', 'SCN003', '1'],
  ['severity: 1 }', 'severity: 60% }', 'SCN003', 'did you mean "0.6"?'],
  ['severity: 1 }', 'severity: "0,6" }', 'SCN003', 'did you mean "0.6"?'],
  ['level: 2', 'level: "2"', 'SCN003', 'did you mean "2"?'],
  ['{ run-on: 1 min, times: 4 }', '{ run-on: 10, times: 4 }', 'SCN003', 'did you mean "10 s"?'],
  ['{ run-on: 1 min, times: 4 }', '{ run-on: 1 min, times: 4 times }', 'SCN003', 'did you mean "4"?'],
  ['refrigerant: R-134a', 'refrigerant: R-134', 'SCN003', 'R-134a'],
  ['state: equalised', 'state: equal', 'SCN003', 'equalised'],
  ['tasks: [A1', 'tasks: [a1', 'SCN003', 'letter A to E'],
  ['{ run-on: 1 min, times: 4 }', '{ run-on: 4 min }', 'SCN003', '10 s'],
  ['{ run-on: 1 min, times: 4 }', '{ run-on: 1 min, time: 4 }', 'SCN001', 'did you mean "times"?'],
  ['person: owner\n', '', 'SCN002', 'person'],
  ['jurisdiction: check-first', 'jurisdiction: the-moon', 'SCN003', 'australia'],
  ['licence: CC-BY-4.0\n', '', 'SCN002', 'licence'],
  ['vehicle: sedan', 'vehicle: seddan', 'SCN102', 'seddan'],
  ['fault: condenser-fan-dead', 'fault: condenser-fan-ded', 'SCN102', 'condenser-fan-ded'],
  ['fault: condenser-fan-dead, ', 'fault: leak, site: sucktion, ', 'SCN106', 'suction'],
  [
    'use: [service, lawful, leaveTheCharge, diagnosing]',
    'use: [service, lawful, leaveThecharge, diagnosing]',
    'SCN101',
    'did you mean "leaveTheCharge"?',
  ],
  ['done: { event: diagnosed }', 'done: { event: diagnosd }', 'SCN120', 'did you mean "diagnosed"?'],
  [
    'causes: [condenser-fan-dead]',
    'causes: [condenser-fan-deed]',
    'SCN121',
    'did you mean "condenser-fan-dead"?',
  ],
  ['parts: [fan]', 'parts: [fen]', 'SCN121', 'did you mean "fan"?'],
  ['- wear goggles', '- waer goggles', 'SCN110', 'Did you mean "wear"?'],
  ['- wear goggles', '- wear gogles', 'SCN110', 'goggles, gloves'],
  ['- look fan', '- look fann', 'SCN111', 'did you mean "fan"?'],
  ['gauge-low port-a side-middle', 'gauge-low port-a side-midle', 'SCN111', 'did you mean "side-middle"?'],
  ['- coupler gauge-low open', '- coupler gauge-lo open', 'SCN111', 'did you mean "gauge-low"?'],
  [
    'signal: clutch.turning, is: on',
    'signal: clutch.turnin, is: on',
    'SCN130',
    'did you mean "clutch.turning"?',
  ],
  ['under: 1900 kPa', 'under: 1900', 'SCN130', 'needs a unit'],
  ['vent: vent.temperatureK', 'vent: vent.temperature', 'SCN131', 'did you mean "vent.temperatureK"?'],
  ['quotes: { high: highSide', 'quotes: { top: highSide', 'SCN134', 'has places for high;'],
  ['quotes: { high: highSide.gaugePressurePa, vent: vent', 'quotes: { vent: vent', 'SCN134', 'high, vent;'],
  ['- id: fanSeen', '- id: fanSeenTwice', 'SCN132', 'rules.fanSeenTwice.idle'],
];

describe('a slip', () => {
  it.each(slips)('%s -> %s', (was, is, code, says) => {
    expect(text).toContain(was);
    const found = check(text.replace(was, is));
    const problem = found.find((one) => one.code === code);
    expect(found.map((one) => one.code)).toContain(code);
    expect(`${problem?.message} ${found.map(({ message }) => message).join(' ')}`).toContain(says);
  });

  it('has one mark at the end of each part of what is said', () => {
    const said = slips.flatMap(([was, is]) => check(text.replace(was, is)).map(({ message }) => message));
    expect(said.filter((one) => /[.;:,] ?[.;:,]/.test(one))).toEqual([]);
    expect(said.join(' ')).toContain('gloves, overall; did you mean "goggles"?');
  });

  it('is told on its own line, but for what is missing', () => {
    const here = slips.filter(([, , code]) => !['SCN002', 'SCN130', 'SCN131'].includes(code));
    const told = here.filter(([was, is, code]) => {
      const problem = check(text.replace(was, is)).find((one) => one.code === code);
      const inside = was.length - was.trimStart().length;
      return problem?.at.startsWith(lineOf(was.slice(inside)));
    });
    expect(told.length / here.length).toBeGreaterThanOrEqual(0.9);
  });
});

describe('a bare number', () => {
  const cans = '    - { id: can-1, net: 12 oz, printed: 12 oz, tare: 90 g }';
  const click = readFileSync('scenarios/click-click.yaml', 'utf8');
  const meant = (was: string, is: string) => {
    expect(click).toContain(was);
    const found = checkScenario('c.yaml', click.replace(was, is), rubrics);
    return found.filter(({ code }) => code === 'SCN003').map(({ fix }) => fix?.to);
  };

  it.each([
    ['its neighbour is in ounces', '{ id: can-1, net: 10, printed: 12 oz, tare: 110 g }', '10 oz'],
    ['the nearest that has a unit is', '{ id: can-1, net: 10 oz, printed: 12, tare: 110 g }', '12 oz'],
    ['that would be more than can be', '{ id: can-1, net: 10 oz, printed: 12 oz, tare: 110 }', '110 g'],
    ['none beside it has a unit', '{ id: can-1, net: 300, printed: 340, tare: 110 }', '300 g'],
  ])('of a can is meant as %s', (_, is, to) => {
    expect(meant(cans, `    - ${is}`)[0]).toBe(to);
  });
});

describe('a file', () => {
  it('that is no YAML is told by line and column', () => {
    expect(check(`${text}\n  : x`)[0].at).toMatch(new RegExp(`^${file}:\\d+:\\d+$`));
    expect(check(text.replace('level: 2', 'level: 2\nlevel: 3'))[0]).toMatchObject({ level: 'error' });
  });

  it('that ships has nothing wrong with it', () => {
    expect(check(text)).toEqual([]);
  });

  it('whose solution does not solve it is refused, and a careless plan that passes as well', () => {
    const lines = text.split('\n');
    const at = (name: string): number => lines.findIndex((line) => line.trim() === `${name}:`);
    const solution = lines.slice(
      at('solution') + 1,
      lines.findIndex((line) => line.includes('# Warm means low')),
    );
    const careless = lines.slice(at('careless') + 1, at('nothing'));
    const swapped = [
      ...lines.slice(0, at('solution') + 1),
      ...careless,
      '  careless:',
      ...solution,
      ...lines.slice(at('nothing')),
    ].join('\n');
    const found = check(swapped);
    expect(found.map(({ code }) => code)).toEqual(expect.arrayContaining(['SCN201', 'SCN202']));
    const low = found.find(({ code }) => code === 'SCN201');
    expect(low?.message).toMatch(/ At \d\d:\d\d /);
  });

  it('whose solution has a line that is refused says which, in its words and at its place', () => {
    const line = text.split('\n').findIndex((one) => one.includes('- begin')) + 2;
    const twice = text.replace('- begin\n', '- begin\n    - repeat: [begin]\n      times: 3\n');
    const refused = check(twice).filter(({ code }) => code === 'SCN203');
    expect(refused).toHaveLength(1);
    expect(refused[0]).toMatchObject({ line, message: expect.stringContaining('"begin"') });
  });

  it('is refused a fault of the charge in a loop that starts evacuated', () => {
    const empty = text.replace('state: equalised', 'state: evacuated').replace('720 g', '0 g');
    const wrong = check(empty.replace('fault: condenser-fan-dead', 'fault: low-charge'));
    expect(wrong.find(({ code }) => code === 'SCN213')).toMatchObject({
      level: 'error',
      at: expect.stringMatching(/^scenarios\/warm-at-the-lights\.yaml:20:/),
    });
    expect(check(empty).map(({ code }) => code)).not.toContain('SCN213');
  });

  it('places a leak where its site says', () => {
    const data = scenarioById('warm-at-the-lights').data;
    const placed = (site?: string) => {
      const fault = { fault: 'leak', severity: 0.5, ...(site === undefined ? {} : { site }) };
      return plantOptions({ ...data, faults: [fault] }, 1).faults;
    };
    expect(placed('suction')).toEqual([{ id: 'leak', severity: 0.5, site: 'suction', onsetStep: 0 }]);
    expect(placed()).toEqual([{ id: 'leak', severity: 0.5, onsetStep: 0 }]);
  });

  it('whose rules look at what is not on the bench is told the line that drops them', () => {
    const [without] = check(text.replace(/ {2}cans:\n( {4}- .*\n)+/, '  cans: []\n')).filter(
      ({ code }) => code === 'SCN130',
    );
    const line = /write (drop: \[.*\]) under rubric/.exec(without.message)?.[1] ?? '';
    expect(line).toContain('readShut');
    const dropped = text
      .replace(/ {2}cans:\n( {4}- .*\n)+/, '  cans: []\n')
      .replace('  use: [service', `  ${line}\n  use: [service`);
    const { problems } = readScenario(file, dropped, rubrics);
    expect(problems.filter(({ code }) => code === 'SCN130')).toEqual([]);
  });

  it('with a leak that only a search tells is warned where nothing searches, and not told to make it larger', () => {
    const leaking = text
      .replace('fault: condenser-fan-dead, severity: 1', 'fault: leak-hose, severity: 0.2')
      .replace('causes: [condenser-fan-dead], parts: [fan]', 'causes: [leak-hose], parts: []');
    const codes = (written: string): string[] => {
      const { formed, ready } = readScenario(file, written, rubrics);
      if (!formed || !ready) throw new Error('cannot be played');
      checkPhysics(formed.data, ready.plant, formed.findings);
      return formed.findings.list.map(({ code }) => code);
    };
    expect(codes(leaking)).toEqual(['SCN214']);
    expect(codes(leaking.replace('  cans:\n', '  tools: [detector]\n  cans:\n'))).toEqual([]);
  });

  it('is told what its solution loses in the units of whoever reads it', () => {
    const lost = (write?: WriteQuantity): string => {
      const { formed, ready } = readScenario(file, text, rubrics);
      if (!formed || !ready) throw new Error('cannot be played');
      const plan = ['begin', 'finish'];
      const idle = { ...formed.data, plans: { solution: plan, careless: plan, nothing: plan } };
      checkPlans(scenarioOf(idle, rubrics), formed.findings, undefined, write);
      return formed.findings.list.map(({ message }) => message).join('\n');
    };
    expect(lost()).toMatch(/Broken: .* kPa/);
    const inPsi = lost(writerOf({ pressure: 'psi', temperature: 'degF', mass: 'oz' }));
    expect(inPsi).toMatch(/Broken: .* psi/);
    expect(inPsi).not.toContain('kPa');
  });

  it('is warned of a fault that nobody could see, a car too full, and what a teacher would not want', () => {
    const odd = text
      .replace('severity: 1 }', 'severity: 0.01 }')
      .replace('720 g', '1500 g')
      .replace('it blows warm', 'the fan stands and it blows warm')
      .replace(/tasks: \[A1.*\]/g, 'tasks: []');
    const warnings = check(odd).filter(({ level }) => level === 'warning');
    expect(warnings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['SCN211', 'SCN212', 'SCN301', 'SCN302']),
    );
  });

  it('is warned where one thing to deliver is done whenever another is', () => {
    const two = readFileSync('scenarios/templates/two-faults.yaml', 'utf8');
    const told = (from: string, to: string): string[] => {
      const { formed } = readScenario('two.yaml', two.replace(from, to), rubrics);
      if (formed) checkTeaching(formed.data, formed.findings);
      return (formed?.findings.list ?? []).map(({ code, message }) => `${code} ${message}`);
    };
    expect(told('', '')).toEqual([]);
    expect(told('diagnosed, subject: condenser-air-blocked', 'diagnosed')).toEqual([
      expect.stringMatching(/^SCN305 "second" is done whenever "first" is/),
    ]);
    expect(told('subject: condenser-air-blocked }', 'subject: cabin-filter-blocked }')).toEqual([
      expect.stringMatching(/^SCN305 "second"/),
    ]);
  });
});
