/** What is offered where a cursor stands, from the schema and the registries themselves. */
import { describe, expect, it } from 'vitest';
import '../../src/loop/car/allVehicles';
import { vocabulary } from '../../src/workshop/reader/vocabulary';
import { offersAt } from '../../src/workshop/text/offers';
import { placeAt } from '../../src/workshop/text/placeAt';

const known = {
  vocabulary: vocabulary({ pressure: 'kPa', temperature: 'degC', mass: 'g' }),
  choices: {
    port: ['port-a', 'port-b'],
    zone: ['fender', 'mat'],
    hose: ['charging'],
    replaceable: ['condenser'],
  },
  vehicle: 'electric',
};

/** `|` stands for the cursor. */
function offered(text: string, vehicle = known.vehicle): string[] {
  const offset = text.indexOf('|');
  const whole = text.replace('|', '');
  const place = placeAt(whole, offset);
  const offers = offersAt(whole, place, whole.slice(place.from, offset), { ...known, vehicle });
  return (offers?.list ?? []).map(({ insert, shown }) => shown ?? insert);
}

describe('what is offered', () => {
  it('are the keys of the place that are not written yet', () => {
    expect(offered('weather:\n  temperature: 30 degC\n  |')).toEqual(['humidity', 'pressure', 'sun']);
    expect(offered('weather: { humidity: 50%, |')).toEqual(['temperature', 'pressure', 'sun']);
    const top = offered('schema: 1\nid: x\n|\nweather: { humidity: 50% }\n');
    expect(top).toContain('vehicle');
    expect(top).not.toContain('weather');
    expect(top).not.toContain('id');
  });

  it('are faults that this car can have, and no others', () => {
    expect(offered('faults:\n  - fault: |')).not.toContain('clutch-slipping');
    expect(offered('faults:\n  - { fault: |', 'van')).toContain('clutch-slipping');
    expect(offered('faults:\n  - { fault: |', 'no-such-car')).toContain('clutch-slipping');
  });

  it('is a unit behind a number', () => {
    expect(offered('contents:\n  charge: 480|')).toEqual(['480 kg', '480 g', '480 mg', '480 oz', '480 lb']);
    expect(offered('weather: { humidity: 50|')).toEqual(['50%']);
    expect(offered('contents:\n  charge: |')).toEqual([]);
  });

  it('is the next word of a line of a plan', () => {
    expect(offered('plans:\n  solution:\n    - wea|')).toContain('wear');
    expect(offered('plans:\n  solution:\n    - wear |')).toEqual(['goggles', 'gloves', 'overall']);
    expect(offered('plans:\n  solution:\n    - couple charging |')).toEqual(['port-a', 'port-b']);
    expect(offered('plans:\n  solution:\n    - couple charging port-a fender,|')).toEqual(['fender', 'mat']);
    expect(offered('plans:\n  solution:\n    - |')).toContain('run-on 10 s');
  });

  it('are ids where ids belong, and choices where there are few', () => {
    expect(offered('bench:\n  hoses: [|')).toEqual(['charging', 'gauge-set']);
    expect(offered('answer: { parts: [|')).toEqual(['condenser']);
    expect(offered('deliver:\n  - id: a\n    done: { event: |')).toContain('noted');
    expect(offered('rubric:\n  use: [service, |')).toContain('hazards');
    expect(offered('found:\n  caps:\n    - { port: |')).toEqual(['port-a', 'port-b']);
  });

  it('is nothing within sentences', () => {
    expect(offered('complaint: It was |')).toEqual([]);
    expect(offered('complaint: >-\n  It was |')).toEqual([]);
  });
});

it('says what a severity means in the quantity of its fault', () => {
  const figures = (id: string) => known.vocabulary.faults.find((fault) => fault.id === id)?.figures ?? [];
  expect(figures('low-charge')[0]).toBe('100\u00a0%');
  expect(figures('missing-orifice')[20]).toMatch(/^8/);
  expect(figures('leak-seal')[20]).toMatch(/a year/);
  for (const { figures: all } of known.vocabulary.faults) expect(all).toHaveLength(21);
});
