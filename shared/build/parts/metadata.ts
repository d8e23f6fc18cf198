/** Shape of a part file's metadata: lengths in mm, from the part's anchor. Unknown keys are errors. */
import { z } from 'zod';

const mm = z.number();
const point = z.tuple([mm, mm]);

export const metadataSchema = z.strictObject({
  unit: z.literal('mm'),
  /** What the anchor is on the part, in words. */
  origin: z.string().min(3),
  /** The size it is drawn in; a layout may ask for another one by these keys, and by no others. */
  size: z
    .strictObject({
      w: mm.positive().optional(),
      h: mm.positive().optional(),
      /** A radius: scales both ways. */
      r: mm.positive().optional(),
      /** True diameter of the line it sits in: scales across the line. */
      d: mm.positive().optional(),
    })
    .optional(),
  /** How much of an upright wall shows below its top face. */
  lip: mm.positive().optional(),
  /** What the group "turning" turns about: a disc of this radius, seen squashed. */
  turns: z.strictObject({ at: point, r: mm.positive(), squash: z.number().positive().max(1) }).optional(),
  /** Where lines end, and the direction in which they leave. */
  anchors: z
    .record(z.string(), z.tuple([mm, mm, z.enum(['rear', 'front', 'left', 'right', 'any'])]))
    .optional(),
  /** Drawings that are shown beside or over it, and so have to be fetched with it. */
  with: z.array(z.string()).min(1).optional(),
});
