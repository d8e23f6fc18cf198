/** The faults of the form: in the groups of the registry, narrowed by what is typed. */
import { expect, it } from 'vitest';
import { faultIds } from '../../src/faults/registry';
import { vocabulary } from '../../src/workshop/reader/vocabulary';
import { siftFaults } from '../../src/workshop/siftFaults';

const { faults } = vocabulary({ pressure: 'kPa', temperature: 'degC', mass: 'g' });
const ids = (typed: string, always?: readonly string[]): string[] =>
  siftFaults(faults, typed, always).flatMap((lot) => lot.faults.map(({ id }) => id));

it('every fault stands in one group, and all are there while nothing is typed', () => {
  expect(ids('')).toEqual(faultIds);
  expect(siftFaults(faults, ' ').map(({ group }) => group)).toEqual([
    'contents',
    'leaks',
    'air',
    'metering',
    'compressor',
  ]);
});

it('what is typed narrows them: words in any order, of title, id or quantity; what is chosen stays', () => {
  expect(ids('FAN radi')).toEqual(['condenser-fan-dead', 'condenser-fan-slow', 'condenser-fan-late']);
  expect(ids('condenser fan dead')).toEqual(['condenser-fan-dead']);
  expect(ids('air the fan')).toEqual(['condenser-fan-dead']);
  expect(ids('no such thing')).toEqual([]);
  expect(ids('no such thing', ['moisture'])).toEqual(['moisture']);
});

it('accents are no hindrance', () => {
  const spanish = [{ ...faults[0], title: 'válvula obstruída' }];
  expect(siftFaults(spanish, 'valvula')).toHaveLength(1);
});
