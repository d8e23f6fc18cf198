/** A form changes a text in place: one value, what has to go along, and not a letter besides. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { changed } from '../../src/workshop/edit/changes';
import { changesFor } from '../../src/workshop/edit/changesFor';
import { formOf } from '../../src/workshop/edit/formOf';
import { portChanges } from '../../src/workshop/edit/portChanges';
import type { Wish } from '../../src/workshop/edit/wish';
import { massUnit, temperatureUnit } from '../../src/workshop/formUnits';
import { vocabulary } from '../../src/workshop/reader/vocabulary';

const METRIC = { pressure: 'kPa', temperature: 'degC', mass: 'g' } as const;
const ALL = ['owner', 'certified', 'high-voltage-trained'];
const NO_PARTS = { before: [], after: [] };
const TEXT = `# A lesson about fans.
id: own
title: Own
vehicle: van # the long one
person: owner # of it
weather: { temperature: 30 degC, humidity: 50% }
contents:
  refrigerant: R-134a
  charge: 45 oz   # weighed
faults:
  # The only one.
  - { fault: low-charge, severity: 0.4 }
complaint: >-
  Fine until June,
  then warm.
answer: { causes: [low-charge], parts: [] }
varies:
  - { what: temperature, from: 29.5 degC, to: 30.5 degC }
plans:
  solution:
    - begin
    - diagnose low-charge sure # said once
    - finish
`;

function asked(wish: Wish, text = TEXT) {
  const found = changesFor(text, wish);
  if (!found) throw new Error('nothing was changed');
  const next = changed(text, found.changes);
  return { text: next, data: parse(next), along: found.along };
}

/** Lines of the two that are not the same. */
const otherLines = (text: string): string[] => {
  const before = TEXT.split('\n');
  return text.split('\n').filter((line) => !before.includes(line));
};

describe('a change by the form', () => {
  it('of a value leaves every other line as it was, remarks behind it too', () => {
    const { text } = asked({ set: 'charge', toG: 900 });
    expect(otherLines(text)).toEqual(['  charge: 900 g   # weighed']);
  });

  it('of the weather moves the varied weather with it', () => {
    const { data, along } = asked({ set: 'temperature', toC: 35 });
    expect(data.weather.temperature).toBe('35 degC');
    expect(data.varies[0]).toEqual({ what: 'temperature', from: '34.5 degC', to: '35.5 degC' });
    expect(along).toEqual(['varies']);
  });

  it('of the fault changes the answer and the diagnosis of the solution with it', () => {
    const { text, data, along } = asked({ set: 'fault', at: 0, to: 'leaking-reed', parts: NO_PARTS });
    expect(data.faults).toEqual([{ fault: 'leaking-reed', severity: 0.4 }]);
    expect(data.answer.causes).toEqual(['leaking-reed']);
    expect(data.plans.solution[1]).toBe('diagnose leaking-reed sure');
    expect(text).toContain('# said once');
    expect(along).toEqual(['answer', 'plan']);
  });

  it('of the fault changes the part that is renewed with it, and that in the solution', () => {
    const text = TEXT.replace('low-charge], parts: []', 'low-charge], parts: [drier, fan]').replace(
      '    - finish',
      '    - replace fan\n    - look fan\n    - finish',
    );
    const wish = { set: 'fault', at: 0, to: 'clutch-slipping' } as const;
    const fan = ['fan', 'fan2'];
    const other = asked({ ...wish, parts: { before: fan, after: ['clutch', 'compressor'] } }, text);
    expect(other.data.answer.parts).toEqual(['drier', 'clutch']);
    expect(other.data.plans.solution.slice(2)).toEqual(['replace clutch', 'look fan', 'finish']);
    expect(other.along).toEqual(['answer', 'plan', 'parts']);
    for (const after of [[], ['fan']]) {
      const same = asked({ ...wish, parts: { before: fan, after } }, text);
      expect(same.data.answer.parts).toEqual(['drier', 'fan']);
      expect(same.along).toEqual(['answer', 'plan']);
    }
  });

  it('knows for each car the parts that mend a fault', () => {
    const { faults } = vocabulary(METRIC);
    const clogged = faults.find(({ id }) => id === 'restricted-orifice');
    expect(clogged?.mendedBy).toMatchObject({ sedan: ['orifice'], hatchback: ['txv'] });
    expect(faults.find(({ id }) => id === 'overcharge')?.mendedBy.sedan).toEqual([]);
  });

  it('of the complaint writes it on one line, in quotes where it needs them', () => {
    const said = 'Two things: it is warm,\nand it "hisses" # loudly';
    const { data, text } = asked({ set: 'complaint', to: said });
    expect(data.complaint).toBe(said.replace('\n', ' '));
    expect(data.answer.parts).toEqual([]);
    expect(text.split('\n').length).toBe(TEXT.split('\n').length - 2);
  });

  it('of the car takes its refrigerant and charge along', () => {
    const { data } = asked({
      set: 'vehicle',
      to: 'pickup',
      refrigerant: 'R-12',
      chargeG: 1250,
      ports: [],
      persons: ALL,
    });
    expect([data.vehicle, data.contents]).toEqual(['pickup', { refrigerant: 'R-12', charge: '1250 g' }]);
  });

  it('of the car leads the hoses of the plans to the same sides of the other car', () => {
    const { vehicles } = vocabulary(METRIC);
    const portsOf = (id: string) => vehicles.find((one) => one.id === id)?.ports ?? [];
    const text = TEXT.replace(
      '    - begin\n',
      [
        '    - begin',
        '    - trace port-b # the high one',
        '    - couple gauge-low port-a firewall,corner-rear,fender,mat',
        '    - couple gauge-high port-b over,there',
        '    - route gauge-low firewall,corner-rear,fender,mat',
        '    - repeat: [cap port-a off]',
        '      times: 2',
        '    - couple: { hose: charging, port: port-a, route: [firewall, corner-rear, fender, mat] }',
        '    - couple:',
        '        hose: charging',
        '        route:',
        '          - firewall',
        '          - corner-rear',
        '          - fender',
        '          - mat',
        '        port: port-a # in lines\n',
      ].join('\n'),
    );
    const ports = portChanges(portsOf('van'), portsOf('hatchback'));
    const wish = {
      set: 'vehicle',
      to: 'hatchback',
      refrigerant: 'R-134a',
      chargeG: 480,
      ports,
      persons: ALL,
    } as const;
    const { data, text: next, along } = asked(wish, text);
    expect(data.plans.solution.slice(1, 8)).toEqual([
      'trace port-a',
      'couple gauge-low port-b side-middle,fender,mat',
      'couple gauge-high port-a over,there',
      'route gauge-low side-middle,fender,mat',
      { repeat: ['cap port-b off'], times: 2 },
      { couple: { hose: 'charging', port: 'port-b', route: ['side-middle', 'fender', 'mat'] } },
      { couple: { hose: 'charging', port: 'port-b', route: ['side-middle', 'fender', 'mat'] } },
    ]);
    expect(next).toContain('# the high one');
    expect(next).toContain('# in lines');
    expect(along).toEqual(['ports', 'contents']);
  });

  it('of the car takes along what else is said of its ports, and a person who may lay hands on it', () => {
    const { vehicles } = vocabulary(METRIC);
    const [van, electric] = ['van', 'electric'].map((id) => vehicles.find((one) => one.id === id));
    if (!van || !electric) throw new Error('no such cars');
    const ports = [
      { from: 'port-a', to: 'port-b', ways: {} },
      { from: 'port-b', to: 'port-a', ways: {} },
    ];
    const text = `${TEXT}found: { caps: [{ port: port-a, is: missing }, { port: port-b, is: own }] }
deliver:
  - { id: port, text: port-a is dear, done: { event: replaced, subject: "port-a" } }
`;
    const { refrigerant, chargeG, persons } = electric;
    const wish = { set: 'vehicle', to: 'electric', refrigerant, chargeG, ports, persons } as const;
    const { data, along, text: next } = asked(wish, text);
    expect(data.found.caps.map(({ port }: { readonly port: string }) => port)).toEqual(['port-b', 'port-a']);
    expect(data.deliver[0]).toEqual({
      id: 'port',
      text: 'port-a is dear',
      done: { event: 'replaced', subject: 'port-b' },
    });
    expect(next).toContain('person: high-voltage-trained # of it');
    expect(along).toEqual(['ports', 'contents', 'person']);
    const back = asked({ ...wish, to: 'van', persons: van.persons, ports: [] }, next);
    expect(back.data.person).toBe('high-voltage-trained');
    expect(back.along).toEqual(['contents']);
  });

  it('adds a fault and takes it out again, and a list may become empty and full again', () => {
    const two = asked({ add: 'fault', id: 'leaking-reed', severity: 0.5 });
    expect(two.data.faults[1]).toEqual({ fault: 'leaking-reed', severity: 0.5 });
    expect(two.data.answer.causes).toEqual(['low-charge', 'leaking-reed']);
    const one = asked({ remove: 'fault', at: 1 }, two.text);
    expect(one.text).toBe(TEXT);
    const none = asked({ remove: 'fault', at: 0 });
    expect(none.data.faults).toEqual([]);
    expect(none.data.answer.causes).toEqual(['nothing-wrong']);
    expect(none.data.complaint).toBe('Fine until June, then warm.');
    const again = asked({ add: 'fault', id: 'low-charge', severity: 0.2 }, none.text);
    expect(again.data.faults).toEqual([{ fault: 'low-charge', severity: 0.2 }]);
    expect(again.data.answer.causes).toEqual(['low-charge']);
  });

  it('writes a severity into a fault that has none yet, in brackets and in lines', () => {
    const short = TEXT.replace(', severity: 0.4', '');
    expect(asked({ set: 'severity', at: 0, to: 0.7 }, short).data.faults[0].severity).toBe(0.7);
    const lines = TEXT.replace('{ fault: low-charge, severity: 0.4 }', 'fault: low-charge');
    expect(asked({ set: 'severity', at: 0, to: 0.7 }, lines).data.faults[0]).toEqual({
      fault: 'low-charge',
      severity: 0.7,
    });
  });

  it('is not made in a text that cannot be read', () => {
    expect(changesFor('faults: [', { set: 'charge', toG: 1 })).toBeNull();
    expect(changesFor('id: a\n', { set: 'severity', at: 2, to: 0.5 })).toBeNull();
  });
});

it('a form reads what is written in whatever unit', () => {
  expect(formOf(TEXT)).toMatchObject({
    vehicle: 'van',
    temperatureC: 30,
    humidityPercent: 50,
    chargeG: 1275.7,
    faults: [{ fault: 'low-charge', severity: 0.4 }],
    complaint: 'Fine until June, then warm.',
  });
  expect(formOf('- a list')).toBeNull();
  expect(formOf('weather: warm')?.temperatureC).toBeNull();
});

it('a form takes what is typed in units of the reader, and shows the same number again', () => {
  const units = { pressure: 'psi', temperature: 'degF', mass: 'oz' } as const;
  const [temperature, mass] = [temperatureUnit(units), massUnit(units)];
  for (let fahrenheit = 14; fahrenheit <= 122; fahrenheit++) {
    const toC = temperature.read(fahrenheit);
    const form = formOf(`weather: { temperature: ${toC} degC }`);
    expect(temperature.show(form?.temperatureC ?? Number.NaN)).toBe(fahrenheit);
  }
  for (let ounces = 0.5; ounces < 100; ounces += 0.5) expect(mass.show(mass.read(ounces))).toBe(ounces);
  expect([temperature.read(95), mass.read(16)]).toEqual([35, 453.6]);
  expect(temperatureUnit({ ...units, temperature: 'degC' }).read(31.5)).toBe(31.5);
});
