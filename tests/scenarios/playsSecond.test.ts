/** A quarter of the library, played with its own plans. */
import { holdPlays } from '../support/holdPlays';

holdPlays(1, 4);
