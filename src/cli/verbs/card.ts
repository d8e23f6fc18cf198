/** `card`: the car card of a real car: what was reckoned as JSON, or the page as one file. */
import { carCard } from '../../export/card/carCard';
import { cardFigures } from '../../export/card/cardFigures';
import { sheetMarkup } from '../../export/card/sheetMarkup';
import { word } from '../../words/words';
import { cardArguments } from '../cardArguments';
import { defineVerb } from '../verb';

export default defineVerb({
  name: 'card',
  summary: 'verbs.card.summary',
  options: {
    charge: { kind: 'text', required: true, example: '"800 g"', summary: 'verbs.card.charge' },
    refrigerant: { kind: 'text', example: 'R-134a', summary: 'verbs.card.refrigerant' },
    loop: { kind: 'text', required: true, example: 'orifice-tube', summary: 'verbs.card.loop' },
    ambient: { kind: 'text', required: true, example: '"30 degC"', summary: 'verbs.card.ambient' },
    humidity: { kind: 'text', example: '50%', summary: 'verbs.card.humidity' },
    altitude: { kind: 'text', example: '"400 m"', summary: 'verbs.card.altitude' },
    can: { kind: 'text', example: '"340 g"', summary: 'verbs.card.can' },
    jurisdiction: { kind: 'text', example: 'check-first', summary: 'verbs.card.jurisdiction' },
    converted: { kind: 'flag', summary: 'verbs.card.converted' },
    share: { kind: 'text', example: '85%', summary: 'verbs.card.share' },
    html: { kind: 'flag', summary: 'verbs.card.html' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  run({ options: { html, json: _json, ...written } }, io) {
    const inputs = cardArguments(written);
    const figures = cardFigures(inputs);
    if (html) io.text(sheetMarkup(word('carCard.title'), carCard(inputs, figures)));
    else io.json({ inputs, ...figures });
    return 0;
  },
});
