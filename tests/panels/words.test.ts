import { describe, expect, test } from 'vitest';
import { nameOf } from '../../src/app/names';
import { writerOf } from '../../src/instruments/evidenceUnits';
import { commandWords } from '../../src/panels/commandWords';
import { type Command, type CommandId, commandSpecs } from '../../src/plant/commandSpecs';
import { isWordId } from '../../src/words/words';

const examples: Readonly<Record<string, string | number>> = {
  item: 'goggles',
  port: 'port-b',
  side: 'low',
  hose: 'charging',
  to: 'on',
  turn: 4,
  can: 'can-1',
  at: 'hand',
  gauge: 'charging',
  channel: 'scale',
  onto: 'charging',
  answer: 'charge',
  cause: 'nothing-wrong',
  sure: 'likely',
  part: 'fan',
  rpm: 900,
  speed: 4,
  degrees: 45,
  grams: 480,
  level: 1,
  step: 0,
  sheet: 'label',
  route: 'mat',
  device: 'vacuum-pump',
  tank: 'charging-tank',
  way: 'inverted',
  kPa: 1000,
  mL: 30,
  paceMmPerS: 25,
  gapMm: 5,
  from: 'below',
  about: 'converted',
  kind: 'PAG',
  gas: 'R-12',
  doing: 'turning',
  of: 'charge',
  amount: 480,
  what: 'recovery',
  refrigerant: 'R-134a',
  oil: 'POE',
  told: 'charge-not-proven',
};

describe('the actions list', () => {
  test.each(Object.keys(commandSpecs) as CommandId[])(
    'has a sentence for %s, with everything filled in',
    (id) => {
      const args = Object.fromEntries(
        Object.keys(commandSpecs[id].args).map((name) => [name, examples[name]]),
      );
      const said = commandWords({ do: id, ...args } as Command, nameOf);
      expect(isWordId(`command.${id}`)).toBe(true);
      expect(said).not.toMatch(/[{}]|undefined/);
      expect(said.charAt(0)).toBe(said.charAt(0).toUpperCase());
    },
  );
});

test('a valve stands in the list as it does in its form', () => {
  const said = (command: Command): string => commandWords(command, nameOf);
  expect(said({ do: 'can-valve', can: 'can-1', turn: 1 })).toMatch(/valve: 1\/16 turn open$/);
  expect(said({ do: 'manifold', side: 'low', turn: 0 })).toMatch(/hand valve: shut$/);
});

describe('evidence in the reader’s units', () => {
  const imperial = writerOf({ pressure: 'psi', temperature: 'degF', mass: 'oz' });
  test.each([
    [{ source: 'lowSide.gaugePressurePa', value: 186_158, unit: 'Pa' }, '27 psi'],
    [{ source: 'vent.temperatureK', value: 293.15, unit: 'K' }, '68.0 °F'],
    [{ source: 'superheatK', value: 12, unit: 'K' }, '12.0 K'],
    [{ source: 'loop.massKg', value: 0.48, unit: 'kg' }, '16.9 oz'],
  ])('%o', (quantity, said) => {
    expect(imperial(quantity)).toBe(said);
  });
});
