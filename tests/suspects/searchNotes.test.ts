import { expect, test } from 'vitest';
import type { SessionRecord } from '../../src/session/record/record';
import { observationsOf } from '../../src/suspects/observation';

test('what a leak search showed is no observation that a ghost is asked about', () => {
  const note = (channel: string, row: number) => ({
    number: row,
    row,
    step: 100 * row,
    command: { do: 'note-reading', channel },
  });
  const event = (subject: string, row: number, unit: string) => ({
    row,
    id: 'noted',
    subject,
    quantity: 3,
    unit,
  });
  const record = {
    actions: [note('detector', 0), note('soap', 1), note('lamp', 2), note('scale', 3)],
    events: [
      event('detector', 0, '1'),
      event('soap', 1, '1'),
      event('lamp', 2, '1'),
      event('scale', 3, 'kg'),
    ],
    signals: [],
  } as unknown as SessionRecord;
  expect(observationsOf(record).map(({ channel }) => channel)).toEqual(['scale']);
});
