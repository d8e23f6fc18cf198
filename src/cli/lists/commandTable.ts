/** The table of commands: what each does, how it is typed, and what may stand for each of its words. */
import { vehicleIds } from '../../loop/car/vehicles';
import { isWordId, placeholdersIn, say, word } from '../../words/words';
import { listCommands } from './listCommands';
import { listed } from './listed';

type Listing = ReturnType<typeof listCommands>[number];
type Argument = Listing['args'][number];

/** Its sentence, with the words to be typed in capitals where they belong. */
function what({ id }: Listing): string {
  const sentence = `command.${id}`;
  if (!isWordId(sentence)) return '';
  const values = placeholdersIn(sentence).map((name) => [name, name.toUpperCase()]);
  return say({ id: sentence, values: Object.fromEntries(values) });
}

const typed = ({ id, args }: Listing): string =>
  [id, ...args.map(({ name }) => name.toUpperCase())].join(' ');

function mayBe(argument: Argument): string {
  if (argument.kind === 'whole') {
    const { min, max, step, unit } = argument;
    return word('list.told.whole', { min: String(min), max: String(max), step: String(step), unit });
  }
  return argument.kind === 'choice' ? argument.of.join(', ') : idsText(argument.may ?? {});
}

/** All ids, those that only some cars have with these cars behind. */
function idsText(may: Readonly<Record<string, readonly string[]>>): string {
  const cars = new Map<string, string[]>();
  for (const [car, ids] of Object.entries(may))
    for (const id of ids) cars.set(id, [...(cars.get(id) ?? []), ...(car === 'any' ? vehicleIds : [car])]);
  const told = [...cars].map(([id, on]) => (on.length < vehicleIds.length ? `${id} (${on.join(', ')})` : id));
  return told.join(', ');
}

export const commandTable = listed(listCommands, {
  id: ({ id }) => id,
  what,
  typed,
  may: ({ args }) => args.map((one) => `${one.name.toUpperCase()}: ${mayBe(one)}`).join('\n'),
});
