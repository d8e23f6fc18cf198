/** Spoilt files, a few of those of the long run. */
import { holdSpoilt } from '../support/holdSpoilt';

holdSpoilt(2_000);
