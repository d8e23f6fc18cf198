/** A saved session: its log, which is the only truth, and the score and hashes that were shown last. */
import { z } from 'zod';

const hash = z.string().regex(/^[0-9a-f]{16}$/, 'a hash is 16 hexadecimal digits');
const step = z.int().min(0).max(100_000_000);

const command = z
  .record(z.string().max(40), z.union([z.string().max(400), z.number()], 'expected text or a number'))
  .refine((c) => typeof c.do === 'string', {
    message: 'a command says what to do',
  });

const log = z.strictObject({
  format: z.literal('portside-session-1'),
  scenarioId: z.string().min(1).max(60),
  scenarioHash: hash,
  engineHash: hash,
  seed: z.int(),
  mode: z.enum(['explore', 'practice', 'assessed']),
  commands: z.array(z.strictObject({ step, command })).max(20_000),
  lastStep: step,
});

const last = z.strictObject({
  score: z.number(),
  reported: z.number(),
  logHash: hash,
  stateHash: hash,
  engineHash: hash,
  /** The score was made with what ghost cars said of the readings. */
  weighed: z.boolean().optional(),
});

/** Answers to the two questions of the debrief; nobody scores them. */
const thought = z.strictObject({ surprised: z.string().max(2000), otherwise: z.string().max(2000) });

export const sessionFileSchema = z.strictObject({ log, last, thought: thought.optional() });
