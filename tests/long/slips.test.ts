/** Slips of the pen, at every key. */
import { holdSlips } from '../support/holdSlips';

holdSlips(1);
