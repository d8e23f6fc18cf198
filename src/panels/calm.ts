/** What is spoken follows what is shown at most every two seconds, and then with the latest. */
import { paced } from './paced';

const SPOKEN_EVERY_MS = 2000;

export const calm = (read: () => string): (() => string) => paced(read, SPOKEN_EVERY_MS);
