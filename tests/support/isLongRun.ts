/** Whether this is `npm run test:long`. */
import { inject } from 'vitest';

declare module 'vitest' {
  interface ProvidedContext {
    readonly isLongRun: boolean;
  }
}

export const isLongRun: boolean = inject('isLongRun');
