/** A form on a page that holds little or nothing: what is missing is written where it belongs. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { scenarioSchema } from '../../shared/schema/scenario';
import { changed } from '../../src/workshop/edit/changes';
import { changesFor } from '../../src/workshop/edit/changesFor';
import { formOf } from '../../src/workshop/edit/formOf';
import type { Wish } from '../../src/workshop/edit/wish';

const VAN: Wish = {
  set: 'vehicle',
  to: 'van',
  refrigerant: 'R-134a',
  chargeG: 1275,
  ports: [],
  persons: ['certified'],
};
const WISHES: readonly Wish[] = [
  VAN,
  { set: 'temperature', toC: 29 },
  { set: 'humidity', toPercent: 50 },
  { set: 'charge', toG: 480 },
  { add: 'fault', id: 'low-charge', severity: 0.5 },
  { add: 'fault', id: 'fan-dead', severity: 0.5 },
  { set: 'complaint', to: 'It is warm.' },
];
const ALL = {
  vehicle: 'van',
  weather: { temperature: '29 degC', humidity: '50%' },
  contents: { refrigerant: 'R-134a', charge: '480 g' },
  faults: [
    { fault: 'low-charge', severity: 0.5 },
    { fault: 'fan-dead', severity: 0.5 },
  ],
  complaint: 'It is warm.',
  answer: { causes: ['low-charge', 'fan-dead'] },
};

function wished(text: string, wishes: readonly Wish[]): string {
  return wishes.reduce((before, wish) => {
    const found = changesFor(before, wish);
    if (!found) throw new Error(`no place for ${JSON.stringify(wish)} in ${before}`);
    return changed(before, found.changes);
  }, text);
}

describe('a form on an empty page', () => {
  it('writes all it has, in whatever order it is asked, and keys stand in the order of the form', () => {
    for (const text of [
      '',
      '# Mine.\n',
      'schema: 1\n',
      'schema: 1',
      'schema: 1\nweather:\ncontents: {}\nfaults:\n',
    ]) {
      for (const turn of WISHES.keys()) {
        const wishes = [...WISHES.slice(turn), ...WISHES.slice(0, turn)];
        const made = parse(
          wished(
            text,
            wishes.filter((wish) => wish !== VAN || turn === 0),
          ),
        );
        const order = Object.keys(scenarioSchema.shape).filter((key) => key in made);
        expect(Object.keys(made)).toEqual(order);
        expect(made.weather).toEqual(ALL.weather);
        expect(made.contents.charge).toBe('480 g');
        expect([...made.answer.causes].sort()).toEqual([...ALL.answer.causes].sort());
        if (turn === 0) expect(made).toEqual(text.includes('schema') ? { schema: 1, ...ALL } : ALL);
      }
    }
  });

  it('writes no person that nobody named, and keeps remarks and the lines between', () => {
    const text = '# Mine.\nschema: 1 # always\n\n# What he says.\ncomplaint: Warm.\n';
    expect(wished(text, [VAN])).toBe(
      '# Mine.\nschema: 1 # always\nvehicle: van\ncontents:\n  refrigerant: R-134a\n  charge: 1275 g\n\n# What he says.\ncomplaint: Warm.\n',
    );
  });

  it('puts a key of a group where the form has it, in a line or on lines of its own', () => {
    const lines = 'contents:\n  state: soaked # all night\ncomplaint: Warm.\n';
    expect(wished(lines, [VAN])).toBe(
      'vehicle: van\ncontents:\n  refrigerant: R-134a\n  charge: 1275 g\n  state: soaked # all night\ncomplaint: Warm.\n',
    );
    const line = 'weather: { temperature: 29 degC }\n';
    expect(wished(line, [{ set: 'humidity', toPercent: 50 }])).toBe(
      'weather: { temperature: 29 degC, humidity: 50% }\n',
    );
  });

  it('writes nothing where something else stands, and shows nothing where nothing is written', () => {
    expect(changesFor('weather: fine\n', { set: 'humidity', toPercent: 50 })).toBeNull();
    expect(changesFor('faults: many\n', { add: 'fault', id: 'fan-dead', severity: 1 })).toBeNull();
    expect(formOf('')).toEqual({
      id: '',
      title: '',
      vehicle: '',
      temperatureC: null,
      humidityPercent: null,
      chargeG: null,
      faults: [],
      complaint: '',
    });
  });
});
