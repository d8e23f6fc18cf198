/**
 * Which engine played a session: another hash means that a stored score can be shown but not made again. It changes with
 * the version of the package and with the tables and models that decide a trajectory.
 */
import { version } from '../../package.json';
import { hashText } from '../numerics/hash';

/** Raised whenever the same log would give another trajectory or another record. */
const MODEL_VERSION = 1;

export const engineHash: string = hashText(`portside ${version} model ${MODEL_VERSION}`);
