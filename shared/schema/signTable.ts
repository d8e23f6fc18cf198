/** Shape of a table of signs by fault: see src/plant/signs/signTable.ts for what it means. */
import { z } from 'zod';
import { PRINTED_SIGNS, SIGN_CHANNELS } from './signWords.ts';

const channel = z.enum(SIGN_CHANNELS);
const printed = z.enum(PRINTED_SIGNS);
const severity = z.number().min(0).max(1);
const byMetering = <Value extends z.ZodType>(value: Value) =>
  z.strictObject({
    'orifice-tube': z.partialRecord(channel, value).optional(),
    'expansion-valve': z.partialRecord(channel, value).optional(),
  });

const row = z.strictObject({
  row: z.string().min(1),
  fault: z.string().min(1),
  source: z.string().min(1),
  at: severity.optional(),
  also: z.array(severity).optional(),
  surely: z.literal(true).optional(),
  site: z.string().optional(),
  engineRpm: z.number().min(600).max(6000).optional(),
  cabin: z.enum(['open', 'closed']).optional(),
  minutes: z.number().min(1).max(120).optional(),
  ambientsC: z.array(z.number().min(-10).max(50)).min(1).optional(),
  signs: byMetering(printed),
  unscored: byMetering(z.string().min(1)).optional(),
});

export const signTableSchema = z.strictObject({ about: z.string().min(1), rows: z.array(row).min(1) });
