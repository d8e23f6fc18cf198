/** Slips of the pen, at a fifth of the keys. */
import { holdSlips } from '../support/holdSlips';

holdSlips(0.2);
