import { describe, expect, test } from 'vitest';
import { isPermissive, shippedPackages } from '../../shared/build/licences';

describe('licences of what ships', () => {
  test('are all permissive', () => {
    const packages = shippedPackages();
    expect(packages.map(({ name }) => name)).toContain('pixi.js');
    expect(packages.filter(({ permissive }) => !permissive)).toEqual([]);
  });

  test.each([
    ['MIT', true],
    ['(MIT OR GPL-3.0-only)', true],
    ['MIT AND GPL-3.0-only', false],
    ['GPL-2.0-or-later', false],
    ['AGPL-3.0-only', false],
    ['SEE LICENSE IN LICENSE', false],
    ['none given', false],
  ])('%s counts as permissive: %s', (expression, permissive) => {
    expect(isPermissive(expression)).toBe(permissive);
  });
});
