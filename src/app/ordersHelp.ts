/** The orders of the written line for a reader: how each is typed, what it does, and what a line lacks that is none. */
import { WAITS } from '../../shared/schema/waits';
import type { Order } from '../panels/CommandLine';
import { commandWords } from '../panels/commandWords';
import { type CommandId, commandSpecs } from '../plant/commandSpecs';
import { isCommandId, type ShapeProblem } from '../session/commandShape';
import { orderLine, shortOrderLine } from '../twin/orderLine';
import { argsTaken, type Choices, ordersTaken } from '../twin/possible';
import { word } from '../words/words';
import { refusalWords } from './notices';

const WAIT_LINE = `run <${WAITS.join(' | ')}>`;
/** What an order leaves to be said. */
const OPEN = '…';

export function ordersFor(choices: Choices): Order[] {
  const orders = ordersTaken(choices).map(
    (order): Order => ({ line: orderLine(order), does: doesWords(order.do) }),
  );
  return [{ line: WAIT_LINE, does: word('words.waits') }, ...orders];
}

/** As the list of what was done has it, its arguments left open. */
function doesWords(command: CommandId): string {
  const names = Object.keys(commandSpecs[command].args);
  const open = Object.fromEntries(names.map((name) => [name, OPEN]));
  return commandWords({ do: command, ...open }, (id) => id);
}

/** What was typed stands in it as it was typed, and so does the order that comes nearest. */
export function unreadWords(line: string, { reason, params }: ShapeProblem, choices: Choices): string {
  const why = refusalWords(reason, params, (id) => id);
  const [command = ''] = line.trim().split(/\s+/);
  if (reason.startsWith('session.refused.noSuchCommand')) return `${why} ${word('words.seeHelp')}`;
  if (!isCommandId(command) || reason === 'session.refused.noSuchWait') return why;
  const order = shortOrderLine({ do: command, args: argsTaken(command, choices) });
  return `${why} ${word('words.takes', { order })}`;
}
