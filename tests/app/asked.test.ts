import { describe, expect, test } from 'vitest';
import { readAddress, writeAddress } from '../../src/app/address';
import { gaugeHistory } from '../../src/app/gaugeHistory';
import { openCore } from '../../src/app/openCore';
import { readSettings, withItsUnits } from '../../src/app/readSettings';

describe('the address', () => {
  test('says scenario, way, bay and speed', () => {
    expect(readAddress('?scenario=x&mode=assessed&seed=417&lapse=60')).toEqual({
      scenarioId: 'x',
      mode: 'assessed',
      seed: 417,
      lapse: 60,
    });
  });

  test('leaves out what it gets wrong', () => {
    expect(readAddress('?scenario=x&mode=cheat&seed=-4&lapse=7')).toEqual({
      scenarioId: 'x',
      mode: 'practice',
      seed: 1,
      lapse: 1,
    });
    expect(readAddress('?mode=assessed')).toBeNull();
  });

  test('comes back as it was written', () => {
    const asked = { scenarioId: 'weighed-in', mode: 'explore', seed: 12, lapse: 0 } as const;
    expect(readAddress(writeAddress(asked))).toEqual(asked);
  });
});

describe('settings', () => {
  test('keep what is a setting and forget the rest', () => {
    const read = readSettings(
      '{"units":{"pressure":"kPa","temperature":"kelvin"},"look":"dark","colour":"red"}',
    );
    expect(read).toEqual({
      units: { pressure: 'kPa', temperature: 'degC', mass: 'g' },
      look: 'dark',
      bay: 'drawn',
      language: 'en',
      sound: 'off',
    });
  });

  test.each([null, '', 'not json', '[]', '7'])('stand at their start for %o', (text) => {
    expect(readSettings(text).units.pressure).toBe('psi');
  });

  test('in Spanish start in kPa, and another language brings its units along unless others were chosen', () => {
    const both = ['en', 'es'];
    const english = readSettings(null, both, ['en-GB']);
    const spanish = readSettings(null, both, ['es-MX', 'en']);
    expect(spanish.units).toEqual({ pressure: 'kPa', temperature: 'degC', mass: 'g' });
    expect(withItsUnits(english, { ...english, language: 'es' })).toEqual(spanish);
    expect(withItsUnits(spanish, { ...spanish, language: 'en' })).toEqual(english);
    const bar = { ...english, units: { ...english.units, pressure: 'bar' as const } };
    expect(withItsUnits(bar, { ...bar, language: 'es' }).units.pressure).toBe('bar');
    expect(readSettings('{"units":{"pressure":"psi"}}', both, ['es']).units.pressure).toBe('psi');
  });
});

describe('the history of a gauge', () => {
  const low = 'lowGauge.gaugePressurePa';
  test('keeps a sample a second, ten minutes of them', () => {
    const history = gaugeHistory();
    for (let step = 0; step <= 50 * 700; step += 10) history.add(step, () => step);
    const { seconds, values } = history.of(low);
    expect(seconds[0]).toBe(100);
    expect(seconds).toHaveLength(601);
    expect(values[0]).toBe(5000);
  });

  test('is cut back when the session goes back', () => {
    const history = gaugeHistory();
    for (let step = 0; step <= 500; step += 50) history.add(step, () => 1);
    history.add(200, () => 2);
    expect(history.of(low).seconds).toEqual([0, 1, 2, 3, 4]);
  });
});

describe('the core of a page', () => {
  test('has a healthy car beside it, but in an assessed session', async () => {
    const ask = async (mode: 'explore' | 'practice' | 'assessed') => {
      const { core } = await openCore({ scenarioId: 'warm-at-the-lights', mode, seed: 1, log: null });
      return core.channels.some(({ id }) => id.startsWith('expected.'));
    };
    expect(await ask('explore')).toBe(true);
    expect(await ask('practice')).toBe(true);
    expect(await ask('assessed')).toBe(false);
  });
});
