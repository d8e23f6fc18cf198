/** Where a cursor stands in a half-written scenario: by indentation and brackets alone. */
import { describe, expect, it } from 'vitest';
import { keysWritten, placeAt } from '../../src/workshop/text/placeAt';

/** `|` stands for the cursor. */
function at(text: string): string {
  const offset = text.indexOf('|');
  const { path, writes, from } = placeAt(text.replace('|', ''), offset);
  return `${path.join('/')} ${writes} "${text.slice(from, offset)}"`;
}

describe('the place of a cursor', () => {
  it.each([
    ['veh|', ' key "veh"'],
    ['vehicle: ha|', 'vehicle value "ha"'],
    ['weather:\n  hum|', 'weather key "hum"'],
    ['weather: { temperature: 30 degC, hum|', 'weather key "hum"'],
    ['weather: { temperature: 3|', 'weather/temperature value "3"'],
    ['bench:\n  hoses: [charging, ga|', 'bench/hoses/1 value "ga"'],
    ['faults:\n  - { fault: low-charge, severity: 0.4 }\n  - { fault: l|', 'faults/1/fault value "l"'],
    ['faults:\n- fault: low-charge\n- fault: l|', 'faults/1/fault value "l"'],
    ['papers:\n  - id: bill\n    ti|', 'papers/0 key "ti"'],
    ['papers:\n  - id: bill\n  - i|', 'papers/1 value "i"'],
    ['plans:\n  solution:\n    - begin\n    - wear gog|', 'plans/solution/1 value "wear gog"'],
    ['plans:\n  solution:\n    - begin\n  care|', 'plans key "care"'],
    ['deliver:\n  - { id: a, done: { all: [{ ev|', 'deliver/0/done/all/0 key "ev"'],
    [
      'rubric:\n  add:\n    - id: own\n      done:\n        all: [{ event: x }, {\n          sig|',
      'rubric/add/0/done/all/1 key "sig"',
    ],
    ['bench: {}\n|', ' key ""'],
  ])('%j is %j', (text, place) => {
    expect(at(text)).toBe(place);
  });

  it('is within sentences, remarks and quotes where nobody can help', () => {
    expect(at('complaint: >-\n  It was fine until Ju|')).toMatch(/^complaint text/);
    expect(at('vehicle: van # the bi|')).toMatch(/text/);
    expect(at('deliver:\n  - { id: a, text: "What is wr|')).toMatch(/text/);
    expect(at('teacher: It goes on\n  over a line: s|')).toMatch(/^teacher text/);
  });

  it('tells which keys are written already', () => {
    const text =
      'id: a\nweather: { humidity: 50% }\npapers:\n  - id: bill\n    title: Bill\nplans:\n  nothing:\n    - begin\n';
    expect([...keysWritten(text)]).toEqual([
      'id',
      'weather',
      'papers',
      'papers/0/id',
      'papers/0/title',
      'plans',
      'plans/nothing',
    ]);
  });
});
