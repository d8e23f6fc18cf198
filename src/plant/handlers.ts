/** Which function answers which command. Commands of the session itself (hint, rewind, begin, finish) have none here. */

import type { Command, CommandId, Outcome } from './commandSpecs';
import { canCare } from './commands/canCare';
import { car } from './commands/car';
import { card } from './commands/card';
import { charge } from './commands/charge';
import { connect } from './commands/connect';
import { convert } from './commands/convert';
import { findOut } from './commands/findOut';
import { gear } from './commands/gear';
import { handOver } from './commands/handOver';
import { hazards } from './commands/hazards';
import { identify } from './commands/identify';
import { look } from './commands/look';
import { measure } from './commands/measure';
import { openLoop } from './commands/openLoop';
import { search } from './commands/search';
import { service } from './commands/service';
import type { Rig } from './rig';

type Handler = (rig: Rig, command: Command) => Outcome;

export const handlers: Readonly<Partial<Record<CommandId, Handler>>> = {
  ...gear,
  ...hazards,
  ...look,
  ...car,
  ...connect,
  ...measure,
  ...charge,
  ...service,
  ...identify,
  ...search,
  ...openLoop,
  ...card,
  ...findOut,
  ...canCare,
  ...convert,
  ...handOver,
};
