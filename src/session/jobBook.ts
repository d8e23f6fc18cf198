/**
 * What the session itself remembers of a job, as plain data: what was read, traced and judged, where hoses, cans and
 * probes were put, what stands on the card, what happened last. It follows from accepted commands and from events;
 * the plant's numbers stand elsewhere. Copied whole at a checkpoint.
 */
import type { Command, PlantEvent } from '../plant/commandSpecs';
import type { CardLine, ConversionLabel, Happening, Stop } from './corePort';

export interface JobBook {
  card: CardLine[];
  worn: string[];
  sheetsRead: string[];
  traced: string[];
  judged: Record<string, 'low' | 'high'>;
  hosePorts: Record<string, string>;
  routes: Record<string, string[]>;
  canInlets: Record<string, string>;
  canPlaces: Record<string, 'hand' | 'scale' | 'mat' | 'bath' | 'hot-water'>;
  devicePlaces: Record<string, string>;
  opened: string[];
  probes: { air: string | null; line: string | null };
  /** Where detector, soap and lamp were put last. */
  searched: { detector: string | null; soap: string | null; lamp: string | null };
  decisions: string[];
  causes: string[];
  /** What the owner was asked about, and what was told at the hand-over. */
  asked: string[];
  told: string[];
  conversionLabel: ConversionLabel | null;
  replaced: string[];
  labelKg: number | null;
  hintsOpened: number;
  deliveriesDone: string[];
  /** Latest first. */
  happened: Happening[];
  stopped: Stop | null;
  /** Step of the last command that was no rewind. */
  lastCommandStep: number;
}

const HAPPENINGS_KEPT = 40;

export function emptyBook(): JobBook {
  return {
    card: [],
    worn: [],
    sheetsRead: [],
    traced: [],
    judged: {},
    hosePorts: {},
    routes: {},
    canInlets: {},
    canPlaces: {},
    devicePlaces: {},
    opened: [],
    probes: { air: null, line: null },
    searched: { detector: null, soap: null, lamp: null },
    decisions: [],
    causes: [],
    asked: [],
    told: [],
    conversionLabel: null,
    replaced: [],
    labelKg: null,
    hintsOpened: 0,
    deliveriesDone: [],
    happened: [],
    stopped: null,
    lastCommandStep: 0,
  };
}

/** Remembers events of one moment; `notable` ones stop the clock when it runs until something happens. */
export function bookEvents(
  book: JobBook,
  step: number,
  events: readonly PlantEvent[],
  notable = false,
): void {
  for (const event of events) {
    book.happened.unshift({ ...event, step, notable });
    const isOff = event.id === 'uncoupled' || event.id === 'hose-caught';
    if (isOff && event.subject !== undefined) delete book.hosePorts[event.subject];
    if (event.id === 'noted') bookReading(book, step, event);
    if (event.id === 'licensed-recovered') bookReceipt(book, step, event);
  }
  book.happened.length = Math.min(book.happened.length, HAPPENINGS_KEPT);
}

function bookReading(book: JobBook, step: number, { subject = '', quantity, unit }: PlantEvent): void {
  const places: Readonly<Record<string, string | null>> = { ...book.probes, ...book.searched };
  const place = places[subject] ?? null;
  const params = { channel: subject, ...(place === null ? {} : { place }) };
  const word = place === null ? 'session.card.reading' : 'session.card.readingAt';
  if (quantity === undefined || unit === undefined) return;
  book.card.push({ step, kind: 'reading', word, params, value: quantity, unit });
}

/** What the licensed person took, by their receipt. */
function bookReceipt(book: JobBook, step: number, { quantity = 0 }: PlantEvent): void {
  const word = 'session.card.receipt';
  book.card.push({ step, kind: 'note', word, params: {}, value: quantity, unit: 'kg' });
}

type Bookkeeper = (book: JobBook, step: number, text: (arg: string) => string) => void;

const addOnce = (list: string[], item: string): void => {
  if (!list.includes(item)) list.push(item);
};

/** A line of the card in the words `session.card.<word>`. */
function write(book: JobBook, step: number, word: string, params: CardLine['params']): void {
  book.card.push({ step, kind: 'note', word: `session.card.${word}`, params });
}

/** What each command leaves in the book, once it was accepted. Commands not named here leave nothing. */
const bookkeepers: { readonly [Id in Command['do']]?: Bookkeeper } = {
  wear: (book, _, text) => addOnce(book.worn, text('item')),
  'take-off': (book, _, text) => {
    book.worn = book.worn.filter((item) => item !== text('item'));
  },
  'read-sheet': (book, _, text) => addOnce(book.sheetsRead, text('sheet')),
  look: (book, step, text) => {
    book.card.push({ step, kind: 'look', word: 'session.card.look', params: { part: text('at') } });
  },
  trace: (book, _, text) => addOnce(book.traced, text('port')),
  'judge-port': (book, step, text) => {
    book.judged[text('port')] = text('side') === 'low' ? 'low' : 'high';
    const params = { port: text('port'), side: text('side') };
    book.card.push({ step, kind: 'look', word: 'session.card.judged', params });
  },
  couple: (book, _, text) => {
    book.hosePorts[text('hose')] = text('port');
    book.routes[text('hose')] = zonesOf(text('route'));
  },
  route: (book, _, text) => {
    book.routes[text('hose')] = zonesOf(text('route'));
  },
  tap: (book, _, text) => {
    book.canInlets[text('can')] = text('onto');
  },
  untap: (book, _, text) => {
    delete book.canInlets[text('can')];
  },
  place: (book, _, text) => {
    book.canPlaces[text('can')] = text('at') as 'hand' | 'scale' | 'mat' | 'bath' | 'hot-water';
  },
  attach: (book, _, text) => {
    book.devicePlaces[text('device')] = text('onto');
  },
  detach: (book, _, text) => {
    delete book.devicePlaces[text('device')];
  },
  'open-loop': (book, _, text) => addOnce(book.opened, text('part')),
  'close-loop': (book, _, text) => {
    book.opened = book.opened.filter((place) => place !== text('part'));
  },
  'probe-air': (book, _, text) => {
    book.probes.air = text('at');
  },
  'probe-line': (book, _, text) => {
    book.probes.line = text('at');
  },
  sniff: (book, _, text) => {
    book.searched.detector = text('at');
  },
  soap: (book, _, text) => {
    book.searched.soap = text('at');
  },
  lamp: (book, _, text) => {
    book.searched.lamp = text('at');
  },
  ask: (book, step, text) => {
    addOnce(book.asked, text('about'));
    write(book, step, 'asked', { about: text('about') });
  },
  'note-loop': (book, step, text) => write(book, step, 'loop', { kind: text('kind') }),
  'note-gas': (book, step, text) => write(book, step, 'gas', { gas: text('gas') }),
  'note-clutch': (book, step, text) => write(book, step, 'clutch', { doing: text('doing') }),
  sum: (book, step, text) => write(book, step, `sum.${text('of')}`, { amount: text('amount') }),
  'mark-can': (book, step, text) =>
    write(book, step, 'canMarked', { can: text('can'), grams: text('grams') }),
  'note-old': (book, step, text) => write(book, step, 'old', { grams: text('grams'), mL: text('mL') }),
  'convert-port': (book, step, text) => write(book, step, 'converted', { port: text('port') }),
  'disable-port': (book, step, text) => write(book, step, 'disabled', { port: text('port') }),
  'fill-oil': (book, step, text) => write(book, step, 'oil', { oil: text('kind'), mL: text('mL') }),
  'renew-seals': (book, step) => write(book, step, 'seals', {}),
  'fit-cut-out': (book, step) => write(book, step, 'cutOut', {}),
  arrange: (book, step) => write(book, step, 'arranged', {}),
  'label-conversion': (book, step, text) => {
    const [refrigerant, grams, oil, mL] = [text('refrigerant'), text('grams'), text('oil'), text('mL')];
    book.conversionLabel = { refrigerant, grams: Number(grams), oil, mL: Number(mL) };
    write(book, step, 'conversionLabel', { refrigerant, grams, oil, mL });
  },
  'hand-over': (book, step, text) => {
    addOnce(book.told, text('told'));
    write(book, step, 'told', { told: text('told') });
  },
  decide: (book, step, text) => {
    book.decisions.push(text('answer'));
    book.card.push({
      step,
      kind: 'decision',
      word: 'session.card.decided',
      params: { answer: text('answer') },
    });
  },
  diagnose: (book, step, text) => {
    book.causes.push(text('cause'));
    const params = { cause: text('cause'), sure: text('sure') };
    book.card.push({ step, kind: 'cause', word: 'session.card.cause', params });
  },
  replace: (book, step, text) => {
    book.replaced.push(text('part'));
    book.card.push({ step, kind: 'repair', word: 'session.card.replaced', params: { part: text('part') } });
  },
  'write-label': (book, step, text) => {
    book.labelKg = Number(text('grams')) / 1000;
    const label: CardLine = { step, kind: 'label', word: 'session.card.label', params: {} };
    book.card.push({ ...label, value: book.labelKg, unit: 'kg' });
  },
  hint: (book, _, text) => {
    book.hintsOpened = Math.max(book.hintsOpened, Number(text('level')));
  },
};

export function bookCommand(book: JobBook, step: number, command: Command): void {
  bookkeepers[command.do]?.(book, step, (arg) => String(command[arg]));
}

const zonesOf = (route: string): string[] => (route === '' ? [] : route.split(','));
