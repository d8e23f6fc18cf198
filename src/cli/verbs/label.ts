/** `label`: the label of a converted car, typed in or as a saved session wrote it. */
import { CONVERTED_TO, conversionLabel, type LabelInputs } from '../../export/card/conversionLabel';
import { labelFromLog, type WrittenLabel } from '../../export/card/labelFromLog';
import { sheetMarkup } from '../../export/card/sheetMarkup';
import { readSessionFile } from '../../session/sessionFile';
import { word } from '../../words/words';
import { quantityOption } from '../cardArguments';
import type { Io } from '../io';
import { defineVerb, UsageError } from '../verb';

export default defineVerb({
  name: 'label',
  summary: 'verbs.label.summary',
  options: {
    charge: { kind: 'text', example: '"800 g"', summary: 'verbs.label.charge' },
    oil: { kind: 'text', example: 'PAG', summary: 'verbs.label.oil' },
    'oil-amount': { kind: 'text', example: '"240 mL"', summary: 'verbs.label.oilAmount' },
    session: { kind: 'text', example: 's.session.json', summary: 'verbs.label.session' },
    'oil-maker': { kind: 'text', summary: 'verbs.label.oilMaker' },
    'trade-name': { kind: 'text', summary: 'verbs.label.tradeName' },
    by: { kind: 'text', summary: 'verbs.label.by' },
    company: { kind: 'text', summary: 'verbs.label.company' },
    address: { kind: 'text', summary: 'verbs.label.address' },
    date: { kind: 'text', summary: 'verbs.label.date' },
    html: { kind: 'flag', summary: 'verbs.card.html' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  run({ options }, io) {
    const { by, company, address, date, session } = options;
    const signed = {
      oilMaker: options['oil-maker'],
      tradeName: options['trade-name'],
      by,
      company,
      address,
      date,
    };
    const given = Object.entries(signed).filter(([, text]) => text !== undefined);
    const written =
      session === undefined
        ? typed(options.charge, options.oil, options['oil-amount'])
        : fromSession(session, io);
    const inputs: LabelInputs = { ...written, ...Object.fromEntries(given) };
    if (options.html) io.text(sheetMarkup(word('carCard.label.title'), conversionLabel(inputs)));
    else io.json(inputs);
    return 0;
  },
});

function typed(charge: string | undefined, oil: string | undefined, amount: string | undefined): LabelInputs {
  if (charge === undefined || oil === undefined || amount === undefined)
    throw new UsageError(word('verbs.label.incomplete'));
  return {
    chargeKg: quantityOption('charge', charge, 'mass'),
    oil,
    oilM3: quantityOption('oil-amount', amount, 'volume'),
  };
}

function fromSession(file: string, io: Io): LabelInputs {
  let found: WrittenLabel | null;
  try {
    found = labelFromLog(readSessionFile(io.readFile(file)).log);
  } catch (error) {
    if (error instanceof UsageError) throw error;
    throw new UsageError(word('verbs.replay.badFile', { file, reason: (error as Error).message }));
  }
  if (found === null) throw new UsageError(word('verbs.label.none', { file }));
  if (found.refrigerant !== CONVERTED_TO)
    throw new UsageError(word('carCard.label.otherGas', { written: found.refrigerant }));
  return found;
}
