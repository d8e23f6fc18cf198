/** Holds the tables of every refrigerant at once: for the command line and the tests, which ask for any of them. */
import { keepTable } from './fluids';
import { table as r12 } from './tables/r12';
import { table as r134a } from './tables/r134a';
import { table as r1234yf } from './tables/r1234yf';

keepTable('R-134a', r134a);
keepTable('R-12', r12);
keepTable('R-1234yf', r1234yf);
