import type { Part } from '../../../layout/layout';

/** What has blades that turn: with a motor, or on the engine's belt. */
export const isFan = (part: Part): boolean => part.kind === 'fan-electric' || part.kind === 'fan-belt';
