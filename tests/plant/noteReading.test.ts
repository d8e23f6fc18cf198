/** What can be written on the card: what a search showed, and no instrument at the end of its range. */
import { expect, it } from 'vitest';
import { bookCommand, bookEvents, emptyBook } from '../../src/session/jobBook';
import { sayCardLine } from '../../src/twin/hear';
import { serviceBench } from '../support/serviceBench';

const leaking = () =>
  serviceBench('sedan', 25, { faults: [{ id: 'leak-joint', severity: 0.4, onsetStep: 0 }] });
const AT = 'discharge-condenser';
const PROBE = { do: 'sniff', at: AT, from: 'below', paceMmPerS: 25, gapMm: 5 } as const;

it('what detector, soap and lamp showed goes on the card, once each has shown something', () => {
  const { plant, give, run, value } = leaking();
  for (const channel of ['detector', 'soap', 'lamp'])
    expect(plant.apply({ do: 'note-reading', channel })).toMatchObject({ reason: 'refusal.nothingToRead' });
  give(PROBE, { do: 'soap', at: AT }, { do: 'lamp', at: AT });
  expect(plant.apply({ do: 'note-reading', channel: 'detector' }).ok).toBe(false);
  run(20);
  for (const [channel, signal] of [
    ['detector', 'detector.ticks'],
    ['soap', 'soap.bubbles'],
    ['lamp', 'lamp.glow'],
  ] as const) {
    const events = [{ id: 'noted', subject: channel, quantity: value(signal), unit: '1' }];
    expect(plant.apply({ do: 'note-reading', channel })).toEqual({ ok: true, events });
  }
  expect(value('detector.ticks')).toBeGreaterThan(0);
  expect(value('soap.bubbles')).toBeGreaterThan(0);
  expect(value('lamp.glow')).toBe(0);
});

it('the card names the place that was searched last', () => {
  const book = emptyBook();
  bookCommand(book, 10, PROBE);
  bookEvents(book, 200, [{ id: 'noted', subject: 'detector', quantity: 3, unit: '1' }]);
  expect(book.card[0].params).toEqual({ channel: 'detector', place: AT });
  expect(sayCardLine(book.card[0])).toMatch(/^Read the leak detector, at .+: 3 of 8$/);
});

it('a vacuum gauge over its range is no reading, nor a high gauge in a vacuum; an empty loop is one of 0', () => {
  const full = serviceBench('sedan', 25);
  full.couple();
  full.give({ do: 'attach', device: 'micron-gauge', onto: 'gauge-low' });
  full.run(5);
  expect(full.value('micronGauge.absolutePressurePa')).toBeGreaterThan(3000);
  const note = { do: 'note-reading', channel: 'micron-gauge' } as const;
  expect(full.plant.apply(note)).toMatchObject({ ok: false, reason: 'refusal.beyondScale' });
  expect(full.give({ do: 'note-reading', channel: 'low-gauge' })).toEqual(['noted:low-gauge']);

  const empty = serviceBench('sedan', 25, { start: 'evacuated', chargeKg: 0 });
  empty.run(5);
  expect(empty.give({ do: 'note-reading', channel: 'high-gauge' })).toEqual(['noted:high-gauge']);
  empty.couple();
  empty.run(20);
  expect(empty.plant.apply({ do: 'note-reading', channel: 'high-gauge' })).toMatchObject({
    reason: 'refusal.beyondScale',
  });
  expect(empty.give({ do: 'note-reading', channel: 'low-gauge' })).toEqual(['noted:low-gauge']);
});
