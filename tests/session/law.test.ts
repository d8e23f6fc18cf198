/** What a place allows whom, and how it stands in a session. */
import { describe, expect, it } from 'vitest';
import { ACTS } from '../../shared/schema/jurisdiction';
import { PERSONS, PLACES } from '../../shared/schema/persons';
import type { ScenarioData } from '../../shared/schema/scenario';
import { jurisdictionOf } from '../../src/session/law/jurisdictions';
import { ruleOfPlace } from '../../src/session/law/ruleOfPlace';
import { standingOf } from '../../src/session/law/standing';
import { scenarioById } from '../../src/session/scenario/library';

const { data } = scenarioById('weighed-in');
const at = (changes: Partial<ScenarioData>) => standingOf({ ...data, ...changes });

describe('the law of a place', () => {
  it('leaves topping up to nobody in Australia, and filling a leaking loop to nobody in Europe', () => {
    // pages of the licensing body; SI 2009/2194 and directive 2006/40/EC article 6(3)
    expect(jurisdictionOf('australia').acts['top-up'].who).toEqual([]);
    for (const place of ['united-kingdom', 'european-union', 'australia'] as const)
      expect(jurisdictionOf(place).acts['fill-leaking'].who).toEqual([]);
  });

  it('lets an owner in the United States buy a small can and charge, and recover on their own car unpaid, but not put in R-12', () => {
    // 42 USC 7671h; 40 CFR 82.154 and 82.34
    const { acts } = jurisdictionOf('united-states');
    for (const act of ['service', 'buy-can', 'charge', 'recover'] as const)
      expect(acts[act].who).toContain('owner');
    expect(acts['handle-r12'].who).not.toContain('owner');
  });

  it('leaves it to nobody anywhere to change a car to a gas it was not made for', () => {
    for (const place of PLACES) expect(jurisdictionOf(place).acts['change-gas'].who).toEqual([]);
  });

  it('forbids in Europe and Australia only a gas of more warming, and in the United States any other', () => {
    // directive 2006/40/EC article 6; 40 CFR 82 subpart G, use conditions
    const may = (jurisdiction: ScenarioData['jurisdiction'], held: 'R-134a' | 'R-1234yf') =>
      at({
        jurisdiction,
        person: 'certified',
        contents: { ...data.contents, refrigerant: held },
        bench: { ...data.bench, refrigerant: held === 'R-134a' ? 'R-1234yf' : 'R-134a' },
      })['law.mayChangeGas'];
    for (const place of ['united-kingdom', 'european-union', 'australia'] as const) {
      expect([place, may(place, 'R-134a'), may(place, 'R-1234yf')]).toEqual([place, true, false]);
    }
    for (const place of ['united-states', 'check-first'] as const)
      expect([place, may(place, 'R-134a'), may(place, 'R-1234yf')]).toEqual([place, false, false]);
  });

  it('tells a debrief its own rule, and how far that may be trusted', () => {
    expect(ruleOfPlace('lawTopUp', { jurisdiction: 'australia' })).toMatchObject({
      rule: 'Australian refrigerant handling code of practice, automotive',
      trust: 'second-hand',
    });
    expect(ruleOfPlace('lawTopUp', { jurisdiction: 'check-first' })).toBeNull();
    expect(ruleOfPlace('eyes', { jurisdiction: 'australia' })).toBeNull();
  });

  it('is nowhere stricter than where no place is told', () => {
    const strict = jurisdictionOf('check-first');
    expect(strict.known).toBe(false);
    for (const place of PLACES)
      for (const act of ACTS)
        for (const person of PERSONS)
          if (strict.acts[act].who.includes(person))
            expect([place, act, jurisdictionOf(place).acts[act].who.includes(person)]).toEqual([
              place,
              act,
              true,
            ]);
  });
});

describe('a person in a scenario', () => {
  it('stands as the place says, and nowhere where none is told', () => {
    const told = at({ jurisdiction: 'australia', person: 'owner' });
    expect(told).toMatchObject({ 'law.known': true, 'law.mayCharge': false, 'person.certified': false });
    const certified = at({ jurisdiction: 'australia', person: 'certified' });
    expect(certified).toMatchObject({ 'law.mayCharge': true, 'law.mayTopUp': false });
    expect(at({ jurisdiction: undefined })).toMatchObject({ 'law.known': false });
  });

  it('converts where the car holds R-12, and changes its gas where it holds another', () => {
    const of = (refrigerant: 'R-12' | 'R-134a') =>
      at({
        contents: { ...data.contents, refrigerant },
        bench: { ...data.bench, refrigerant: refrigerant === 'R-12' ? 'R-134a' : 'R-1234yf' },
      });
    expect(of('R-12')).toMatchObject({ 'law.convertsR12': true, 'law.changesGas': false });
    expect(of('R-134a')).toMatchObject({ 'law.convertsR12': false, 'law.changesGas': true });
    expect(at({})).toMatchObject({ 'law.convertsR12': false, 'law.changesGas': false });
  });

  it('needs training for a gas that burns and for high voltage, whatever the law', () => {
    const trained = (vehicle: string, person: ScenarioData['person']) =>
      at({ vehicle, person })['person.trainedForCar'];
    expect(trained('hatchback', 'owner')).toBe(true);
    expect(trained('compact', 'owner')).toBe(false);
    expect(trained('compact', 'certified')).toBe(true);
    expect(trained('electric', 'certified')).toBe(false);
    expect(trained('electric', 'high-voltage-trained')).toBe(true);
  });
});
