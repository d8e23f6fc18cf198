/** Spoilt files, a hundred thousand. */
import { holdSpoilt } from '../support/holdSpoilt';

holdSpoilt(100_000);
