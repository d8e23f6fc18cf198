/** Sizes of a hose that leads to a can, mm, and how it is laid. */
export const CAN_HOSE_MM = 16;
/** From the hose's last point to the middle of the nut at its end. */
export const END_MM = 20;
/** Steps it is given when it is laid: enough to round its corners. */
export const LAID_STEPS = 6;
