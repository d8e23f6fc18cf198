/**
 * Files that mean harm, or were spoilt on the way: each is refused with a place and a plain reason, in under a second, and
 * nothing of it is run.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shapeProblems } from '../../shared/schema/problems';
import { readYaml } from '../../shared/schema/readYaml';
import { scenarioSchema } from '../../shared/schema/scenario';
import { readScenario } from '../../src/scoring/readScenario';
import { rubrics } from '../../src/session/scenario/rubrics';

const good = readFileSync('scenarios/templates/one-fault.yaml', 'utf8');
const instead = (was: string, is: string): string => {
  expect(good).toContain(was);
  return good.replace(was, is);
};
/** As the command line reads a file: bytes that are no UTF-8 become marks of lost letters. */
const asRead = (bytes: Buffer): string => bytes.toString('utf8');
const bomb = `a: &a [x, x, x, x, x, x, x, x, x]\n${[...'bcdefghi'].map((name, at) => `${name}: &${name} [${`*${'abcdefgh'[at]}, `.repeat(9)}]`).join('\n')}\n`;

const hostile: readonly (readonly [what: string, text: () => string, code: string])[] = [
  ['an alias bomb', () => bomb, 'SCN012'],
  [
    'an alias in a good file',
    () => instead('author: Your name', 'author: &h Your name').replace('licence: CC-BY-4.0', 'licence: *h'),
    'SCN012',
  ],
  ['megabytes', () => `${good}# ${'x'.repeat(3_000_000)}\n`, 'SCN016'],
  ['a quarter of a million lines', () => good + '#\n'.repeat(250_000), 'SCN016'],
  ['one endless line', () => `${good}# ${'x'.repeat(20_000)}\n`, 'SCN016'],
  [
    'many thousand keys',
    () =>
      Array.from({ length: 20_000 }, (_, at) => `k${at}: 1`)
        .join(', ')
        .replace(/^/, '{')
        .slice(0, 7_000),
    'SCN010',
  ],
  [
    'six thousand keys, each twice',
    () => Array.from({ length: 5_990 }, (_, at) => `k${at % 2995}: 1`).join('\n'),
    'SCN011',
  ],
  ['__proto__', () => `${good}__proto__: { polluted: true }\n`, 'SCN018'],
  [
    'constructor',
    () => instead('place', 'place').replace('owner:', 'constructor: { prototype: {} }\nowner:'),
    'SCN018',
  ],
  ['toString', () => instead('  opened: Not', '  toString: Not'), 'SCN018'],
  ['a merge key', () => instead('  opened: Not since spring.', '  <<: { opened: No }'), 'SCN018'],
  ['a tag that makes a function', () => instead('title: Fine', 'title: !!js/function Fine'), 'SCN013'],
  ['a tag of bytes', () => instead('title: Fine', 'title: !!binary Fine'), 'SCN013'],
  ['a plain tag', () => instead('title: Fine', 'title: !!str Fine'), 'SCN013'],
  [
    'a script in a text',
    () => instead('title: Fine until', 'title: <script>alert(1)</script> until'),
    'SCN020',
  ],
  [
    'markup in a hint',
    () => instead('  - It is cold on', '  - <img src=x onerror=alert(1)> It is cold on'),
    'SCN020',
  ],
  [
    'a figure of no unit in a hint',
    () => instead('  - It is cold on', '  - At {480 grams} it is cold on'),
    'SCN021',
  ],
  [
    'a figure in braces on a paper',
    () => instead('title: Fine until', 'title: At {17 degC} fine until'),
    'SCN021',
  ],
  ['an address', () => instead('author: Your name', 'author: https://example.org/me'), 'SCN020'],
  ['an address that runs', () => instead('author: Your name', 'author: "javascript:alert(1)"'), 'SCN020'],
  [
    'brackets, forty deep',
    () => instead('faults:', `place: ${'['.repeat(40)}${']'.repeat(40)}\nfaults:`),
    'SCN016',
  ],
  ['brackets, a hundred thousand deep', () => '['.repeat(100_000), 'SCN016'],
  ['brackets on lines of their own', () => '[\n'.repeat(5_000), 'SCN010'],
  ['list marks, a thousand deep', () => `a:\n  ${'- '.repeat(1_000)}x\n`, 'SCN016'],
  [
    'groups, a hundred deep',
    () => Array.from({ length: 100 }, (_, at) => `${' '.repeat(at)}k:`).join('\n'),
    'SCN016',
  ],
  ['UTF-16', () => asRead(Buffer.from(`\ufeff${good}`, 'utf16le')), 'SCN019'],
  ['UTF-16 without a mark', () => asRead(Buffer.from(good, 'utf16le')), 'SCN019'],
  ['Latin-1', () => asRead(Buffer.from(instead('Your name', 'José'), 'latin1')), 'SCN019'],
  ['a letter nought', () => instead('Your name', 'Your\0name'), 'SCN019'],
  ['a nought as an escape', () => instead('Your name', '"Your\\0name"'), 'SCN019'],
  ['half a letter', () => instead('Your name', 'Your \ud800 name'), 'SCN019'],
  ['half a letter as an escape', () => instead('Your name', '"Your \\ud800 name"'), 'SCN019'],
  ['writing that turns round', () => instead('Your name', 'Your \u202eeman'), 'SCN019'],
  ['a folded text of controls', () => instead('debrief: >-', 'debrief: >-\n  \u0007\u001b[31m'), 'SCN019'],
  ['a number beyond all', () => instead('severity: 1', 'severity: 1e309'), 'SCN017'],
  ['not a number', () => instead('severity: 1', 'severity: .nan'), 'SCN017'],
  ['no end', () => instead('severity: 1', 'severity: -.inf'), 'SCN017'],
  ['a number nobody counts', () => instead('level: 1', 'level: 123456789012345678901234567890'), 'SCN017'],
  ['a quantity beyond all', () => instead('charge: 480 g', 'charge: 1e400 g'), 'SCN003'],
  ['less than nothing', () => instead('charge: 480 g', 'charge: -480 g'), 'SCN003'],
  [
    'a date',
    () => instead('author: Your name', 'author: 2020-01-01T00:00:00Z\nlevel2: 2020-01-01'),
    'SCN001',
  ],
  ['a switch for a text', () => instead('title: Fine until it stands', 'title: true'), 'SCN003'],
  ['a text for a switch', () => instead('bench:\n', 'bench:\n  rated: no\n'), 'SCN003'],
  ['tabs', () => instead('  refrigerant', '\trefrigerant'), 'SCN010'],
  ['nothing', () => '', 'SCN015'],
  ['only notes', () => '# nothing\n# more of it\n', 'SCN015'],
  ['two documents', () => `${good}---\n${good}`, 'SCN014'],
  ['a list', () => '- one\n- two\n', 'SCN003'],
  ['a word', () => 'scenario', 'SCN003'],
  [
    'a plan of very many lines',
    () => instead('    - begin\n', `    - begin\n${'    - { run-on: 10 s }\n'.repeat(5_000)}`),
    'SCN003',
  ],
  [
    'a hundred thousand lines of plan',
    () => instead('    - begin\n', `    - begin\n${'    - look fan\n'.repeat(100_000)}`),
    'SCN016',
  ],
  [
    'ten thousand lines, written once',
    () =>
      instead(
        '    - begin\n',
        `    - begin\n${'    - { repeat: [look fan, look fan, look fan], times: 200 }\n'.repeat(20)}`,
      ),
    'SCN112',
  ],
  ['years of waiting', () => instead('    - begin\n', '    - begin\n    - run-on 90000 h\n'), 'SCN113'],
  [
    'years, one step at a time',
    () =>
      instead(
        '    - begin\n',
        '    - begin\n    - { repeat: [{ run-on: 5 min, times: 200 }], times: 200 }\n',
      ),
    'SCN113',
  ],
  [
    'thousands of faults',
    () => instead('faults:\n', `faults:\n${'  - { fault: low-charge, severity: 0.5 }\n'.repeat(4_000)}`),
    'SCN003',
  ],
  [
    'a range that runs backwards',
    () => instead('from: 30.5 degC, to: 31.5', 'from: 31.5 degC, to: 30.5'),
    'SCN127',
  ],
  [
    'a condition, thirty deep',
    () =>
      instead(
        'done: { event: diagnosed }',
        `done: ${'{ not: '.repeat(30)}{ event: diagnosed }${' }'.repeat(30)}`,
      ),
    'SCN016',
  ],
];
/** Of the processor's own time, so that a busy machine is no finding. */
const MOST_US = 1_000_000;

describe('a file that means harm', () => {
  it.each(hostile)('%s', (_, write, code) => {
    const text = write();
    const began = process.cpuUsage();
    const { problems, ready } = readScenario('hostile.yaml', text, rubrics);
    const { user, system } = process.cpuUsage(began);
    const tookUs = user + system;
    expect(ready).toBeUndefined();
    expect(problems.map((problem) => problem.code)).toContain(code);
    for (const { at, message } of problems) {
      expect(at).toMatch(/^hostile\.yaml:\d+:\d+$/);
      expect(message.length).toBeGreaterThan(5);
    }
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
    expect(tookUs).toBeLessThan(MOST_US);
  });
});

describe('a file that only looks odd', () => {
  const formOf = (text: string): unknown[] => shapeProblems(readYaml('odd.yaml', text), scenarioSchema);

  it.each([
    ['line ends of another system', () => good.replaceAll('\n', '\r\n')],
    ['a mark of byte order before it', () => `\ufeff${good}`],
    ['letters of many tongues', () => instead('Your name', 'José Ωμέγα 王 🙂')],
    ['less-than signs', () => instead('title: Fine', 'title: 3 < 5 and 7 > 6, fine')],
    ['nought below nought', () => instead('severity: 1 }', 'severity: -0 }')],
    [
      'words that once were switches',
      () => instead('author: Your name', 'author: no').replace('licence: CC-BY-4.0', 'licence: off'),
    ],
  ])('%s is read', (_, write) => {
    expect(formOf(write())).toEqual([]);
  });
});
