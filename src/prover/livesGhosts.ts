/** Whether a job lives ghost cars. Whoever lived them keeps them, so such jobs of one scenario go to one thread. */
import type { ProofJob } from './jobs';

export const livesGhosts = ({ kind }: ProofJob): boolean => kind === 'know' || kind === 'apart';
