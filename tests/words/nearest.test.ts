import { describe, expect, test } from 'vitest';
import { nearest } from '../../src/words/nearest';

describe('did you mean', () => {
  test.each([
    ['vehicel', 'vehicle'],
    ['hgh', 'high'],
    ['SEVERITY', 'severity'],
  ])('takes %s for %s', (given, meant) => {
    expect(nearest(given, ['vehicle', 'high', 'severity'])).toBe(meant);
  });

  test('guesses nothing where nothing is near', () => {
    expect(nearest('weather', ['vehicle', 'high'])).toBeUndefined();
    expect(nearest('x', [])).toBeUndefined();
  });
});
