import { describe, expect, it } from 'vitest';
import { type BayFrame, stillFrame } from '../../src/bay/bayFrame';
import { emptyHand, type Hand } from '../../src/bay/gesture/handGesture';
import { freeEndAt } from '../../src/bay/hose/freeEndAt';
import { entriesOf, type GearPlaces } from '../../src/bay/twin/entries';
import { keyAct } from '../../src/bay/twin/keys';
import { clearBox } from '../../src/bay/twin/placeClear';
import { layoutIds, layoutOf } from '../../src/layout/layouts';

const layout = layoutOf('hatchback');
const places: GearPlaces = {
  coupler: () => [100, 500],
  can: () => [96, 690],
  joint: () => [127, 614],
  valve: () => [96, 590],
  dial: () => [-10, 640],
  scale: () => [96, 790],
};
const frame: BayFrame = {
  ...stillFrame(['port-a', 'port-b']),
  hoses: [
    { id: 'low', port: null, open: false, route: [], caught: false },
    { id: 'high', port: 'port-a', open: true, route: ['side-middle'], caught: false },
  ],
  can: {
    id: 'can-1',
    tiltDeg: 90,
    valveSixteenths: 4,
    print: 'R-134a',
    mounted: true,
    frostLevel: null,
    onScale: true,
    readout: null,
  },
};
const labels = (f: BayFrame, hand: Hand = emptyHand()): string[] =>
  entriesOf(layout, f, places, hand).map((entry) => entry.label);

describe('what the twin says', () => {
  it('tells a port by bore and place, and what is on it, never which side it is', () => {
    const all = labels({ ...frame, assessed: true });
    expect(all).toContain('13 mm port, middle left, blank cap on');
    expect(all.find((label) => label.startsWith('16 mm port'))).toContain('High-side coupler');
    const aboutPorts = all.filter((label) => label.startsWith('13 mm port'));
    expect(aboutPorts.join()).not.toMatch(/low|high|suction|liquid/i);
  });

  it('has the joint of the can with its hose as a thing to take, where there is one', () => {
    const joined = { ...frame, can: frame.can && { ...frame.can, onto: 'charging' as const } };
    expect(labels(joined)).toContain('Charging hose, joined to the can');
    expect(labels(frame).join()).not.toContain('joined to the can');
  });

  it('leaves lines unnamed when assessed, and names them otherwise', () => {
    expect(labels(frame).some((label) => label.startsWith('Suction line: from Expansion valve'))).toBe(true);
    const assessed = labels({ ...frame, assessed: true });
    expect(assessed.some((label) => /Suction|Liquid|Discharge/.test(label))).toBe(false);
    expect(assessed.filter((l) => l.startsWith('Line')).join('|')).toMatch(
      /Line, 16\.0 mm across, (rear|middle|front) left/,
    );
  });

  it('does not name what tells the kind of loop when assessed', () => {
    const sedan = layoutOf('sedan');
    const still = stillFrame(['port-a', 'port-b']);
    const names = (assessed: boolean) =>
      entriesOf(sedan, { ...still, assessed }, places, emptyHand())
        .map((entry) => entry.label)
        .join('|');
    expect(names(false)).toMatch(/Accumulator/);
    expect(names(false)).toMatch(/Orifice tube/);
    expect(names(true)).not.toMatch(/Accumulator|Orifice|Evaporator/);
    expect(names(true)).toMatch(/Part of the loop, rear left/);
    expect(names(true)).toMatch(/Compressor clutch/);
  });

  it('says how a coupler stands and how the can is tilted', () => {
    const all = labels(frame);
    expect(all).toContain('Low-side coupler, on the mat');
    expect(all.some((label) => /^High-side coupler, on the 16 mm port.*, open$/.test(label))).toBe(true);
    expect(all).toContain('Can of refrigerant, tilted 90°');
  });

  it('every name of every part is a word, not a key', () => {
    for (const id of layoutIds) {
      const car = layoutOf(id);
      const all = entriesOf(car, stillFrame(car.ports.map((p) => p.id)), places, emptyHand()).map(
        (entry) => entry.label,
      );
      expect(all.filter((label) => /^[a-z]/.test(label))).toEqual([]);
      expect(new Set(entriesOf(car, frame, places, emptyHand()).map((entry) => entry.key)).size).toBe(
        entriesOf(car, frame, places, emptyHand()).length,
      );
    }
  });
});

describe('while something is in the hand', () => {
  const holding: Hand = {
    doing: 'carrying',
    item: 'coupler:low',
    from: null,
    at: null,
    dragged: false,
    valid: ['port-b', 'mat'],
  };

  it('Tab meets only places where it fits, a port once for each way to lead the hose', () => {
    const entries = entriesOf(layout, frame, places, holding);
    expect(new Set(entries.map((entry) => entry.id))).toEqual(new Set(['port-b', 'mat']));
    const ways = entries.filter((entry) => entry.id === 'port-b');
    expect(ways.length).toBeGreaterThanOrEqual(3);
    expect(ways[0].label).toContain('straight over the fender');
    expect(ways.some((entry) => entry.route?.includes('fan'))).toBe(true);
  });
});

describe('a can and the free end of a hose', () => {
  const carrying = (item: string, valid: readonly string[]): Hand => ({
    doing: 'carrying',
    item,
    from: null,
    at: null,
    dragged: false,
    valid,
  });
  const both: BayFrame = {
    ...frame,
    hoses: [...frame.hoses, { id: 'utility', port: null, open: false, route: [], caught: false }],
    ends: ['charging', 'utility'],
  };

  it('go together by keyboard from either side, and each end says whose it is', () => {
    expect(labels(both)).toEqual(
      expect.arrayContaining([
        'Free end of the charging hose, on the mat',
        'Free end of the middle hose, on the mat',
      ]),
    );
    expect(labels(both, carrying('can', ['end:charging', 'end:utility']))).toEqual([
      'Can of refrigerant to the free end of the charging hose',
      'Can of refrigerant to the free end of the middle hose',
    ]);
    expect(labels(both, carrying('end:charging', ['can']))).toEqual([
      'Free end of the charging hose to the can',
    ]);
  });

  it('two ends lie apart, both on the mat, and one alone lies where either would', () => {
    for (const id of layoutIds) {
      const car = layoutOf(id);
      const [, y] = freeEndAt(car, both, 'utility');
      const [, second] = freeEndAt(car, both, 'charging');
      expect(second - y).toBeGreaterThanOrEqual(48);
      expect(second + 24).toBeLessThan(car.mat.rect[1] + car.mat.rect[3]);
      expect(freeEndAt(car, frame, 'charging')).toEqual(freeEndAt(car, both, 'utility'));
    }
  });
});

describe('a label over a small picture', () => {
  const label = { halfWidth: 80, halfHeight: 14 };

  it('stands whole, over the buttons below, and on no other', () => {
    const first = clearBox({ x: 380, y: 235, ...label }, 390, 240, []);
    expect(first.x + 80).toBeLessThanOrEqual(390);
    expect(first.y + 14).toBeLessThanOrEqual(240 - 52);
    const second = clearBox({ x: 300, y: 230, ...label }, 390, 240, [first]);
    expect(first.y - second.y).toBeGreaterThanOrEqual(28);
  });

  it('is left where it is where nothing is in its way', () => {
    const box = { x: 400, y: 200, ...label };
    expect(clearBox(box, 800, 550, [])).toEqual(box);
  });
});

describe('while the page holds a tool', () => {
  it('its places are offered and everything else stays within reach', () => {
    const ready = { item: 'can', valid: ['mat', 'scale'] };
    const entries = entriesOf(layout, frame, places, emptyHand(), ready);
    expect(entries.filter((entry) => entry.puts).map((entry) => entry.id)).toEqual(['mat', 'scale']);
    expect(entries.map((entry) => entry.id)).toEqual(
      expect.arrayContaining(['can-tilt', 'can-valve', 'battery']),
    );
    expect(new Set(entries.map((entry) => entry.key)).size).toBe(entries.length);
  });
});

describe('keys', () => {
  const [entry] = entriesOf(layout, frame, places, emptyHand());
  const can = entriesOf(layout, frame, places, emptyHand()).find((e) => e.id === 'can');
  const valve = entriesOf(layout, frame, places, emptyHand()).find((e) => e.id === 'can-valve');
  const press = (key: string, on = entry, shift = false) =>
    keyAct({ key, shift }, on, emptyHand(), frame.can);

  it('tilt the can in steps of 5°, 15° with Shift, and stop at its ends', () => {
    if (!can) throw new Error('the can is there');
    expect(press(']', can)).toEqual({ act: 'tilt', degrees: 95 });
    expect(press('{', can, true)).toEqual({ act: 'tilt', degrees: 75 });
    expect(press('End', can)).toEqual({ act: 'tilt', degrees: 180 });
    expect(keyAct({ key: '[', shift: false }, can, emptyHand(), { tiltDeg: 0, valveSixteenths: 0 })).toEqual({
      act: 'tilt',
      degrees: 0,
    });
  });

  it('turn the valve in sixteenths', () => {
    if (!valve) throw new Error('the valve is there');
    expect(press('+', valve)).toEqual({ act: 'valve', sixteenths: 5 });
    expect(press('ArrowLeft', valve)).toEqual({ act: 'valve', sixteenths: 3 });
    expect(press('Home', valve)).toEqual({ act: 'valve', sixteenths: 0 });
    expect(press('=', valve, true)).toEqual({ act: 'valve', sixteenths: 6 });
  });

  it('look, go, cap, coupler; and are left alone where they mean nothing', () => {
    expect(press('Enter')).toEqual({ act: 'look' });
    expect(press('ArrowUp')).toEqual({ act: 'go', arrow: 'up' });
    expect(press('c')).toEqual({ act: 'cap' });
    expect(press('K')).toEqual({ act: 'coupler' });
    expect(press('Tab')).toBeNull();
    expect(press('Escape')).toBeNull();
    expect(press(']')).toBeNull();
  });

  it('put, and give up, what is in the hand', () => {
    const holding: Hand = {
      doing: 'carrying',
      item: 'coupler:low',
      from: null,
      at: null,
      dragged: false,
      valid: ['port-b'],
    };
    const [place] = entriesOf(layout, frame, places, holding);
    expect(keyAct({ key: ' ', shift: false }, place, holding, null)).toEqual({ act: 'put' });
    expect(keyAct({ key: 'Escape', shift: false }, place, holding, null)).toEqual({ act: 'cancel' });
  });
});
