/**
 * The car card: one page for a real car, out of what was typed in and what was reckoned. Sentences of cautions, stops
 * and law are reminders that defer to the vehicle's service information, local codes and licensed practice.
 *
 * Least pressure at rest before it is run: 345, 483 and 690 kPa over 16, 24 and 33 °C, R-134a (printed service text).
 */
import type { Act } from '../../../shared/schema/jurisdiction';
import type { Person } from '../../../shared/schema/persons';
import { jurisdictionOf } from '../../session/law/jurisdictions';
import { formatNumber } from '../../units/format';
import { CELSIUS_ZERO_K } from '../../units/temperature';
import { lawTold } from '../../words/lawTold';
import { isWordId, say, word } from '../../words/words';
import type { CardFigures } from './cardFigures';
import { type CardInputs, filledWith } from './cardInputs';
import { blank, type Leaf, leaf, list, pairs } from './leaf';
import { grams, mass, pressure, pressureSpans, temperature } from './written';

const PERCENT = 100;
/** Over the line by more than this, cold, something is in it that does not condense: two gauges' error, about 10 psi. */
const OVER_REST_PA = 70_000;
const LEAST_AT_REST: readonly (readonly [overC: number, gaugePa: number])[] = [
  [33, 690_000],
  [24, 483_000],
  [16, 345_000],
];

export function carCard(inputs: CardInputs, figures: CardFigures): Leaf {
  return leaf(
    'article',
    'sheet card',
    head(inputs),
    leaf(
      'div',
      'cols',
      leaf('div', 'col', sums(inputs, figures), stops(inputs, figures)),
      leaf('div', 'col', shows(figures), cautions(inputs)),
    ),
    law(inputs),
    toWrite(inputs),
    leaf('footer', '', word('carCard.foot')),
  );
}

const section = (kind: string, title: string, ...inside: readonly Leaf[]): Leaf =>
  leaf('section', kind, leaf('h2', '', title), ...inside);

function head(inputs: CardInputs): Leaf {
  const own = [
    word('carCard.own.car'),
    word('carCard.own.plate'),
    word('carCard.own.date'),
    word('carCard.own.by'),
  ];
  const today = word('carCard.typed.todayText', {
    temperature: temperature(inputs.ambientK),
    humidity: String(Math.round(PERCENT * inputs.relativeHumidity)),
    height: formatNumber(inputs.altitudeM, 1),
  });
  const onLabel = word('carCard.typed.chargeText', {
    refrigerant: inputs.labelRefrigerant,
    mass: mass(inputs.labelChargeKg),
  });
  return leaf(
    'header',
    '',
    leaf('div', 'name', leaf('h1', '', word('carCard.title')), leaf('p', '', word('carCard.sub'))),
    leaf('div', 'blanks own', ...own.map(blank)),
    pairs([
      [word('carCard.typed.charge'), onLabel],
      [
        word('carCard.typed.loop'),
        inputs.loop === 'orifice-tube'
          ? word('carCard.typed.orifice-tube')
          : word('carCard.typed.expansion-valve'),
      ],
      [word('carCard.typed.today'), today],
      [word('carCard.typed.can'), mass(inputs.canNetKg)],
    ]),
  );
}

function sums(inputs: CardInputs, { sums: found }: CardFigures): Leaf {
  const target = mass(found.targetKg);
  const goesIn = found.between
    ? word('carCard.sums.converted', {
        mass: target,
        percent: String(Math.round(PERCENT * inputs.convertedShare)),
        from: mass(found.between[0]),
        to: mass(found.between[1]),
      })
    : word('carCard.sums.byLabel', { mass: target, refrigerant: inputs.labelRefrigerant });
  const hose = { liquid: grams(found.hoseLiquidKg), gas: grams(found.hoseGasKg) };
  return section(
    'sums',
    word('carCard.sums.title'),
    pairs([
      [word('carCard.sums.goesIn'), goesIn],
      [word('carCard.sums.cans'), cansText(found)],
      [word('carCard.sums.net'), word('carCard.sums.netText', { net: mass(inputs.canNetKg) })],
      [word('carCard.sums.hose'), word('carCard.sums.hoseText', hose)],
      [word('carCard.sums.near'), word('carCard.sums.nearText')],
      [
        word('carCard.sums.oil'),
        inputs.converts ? word('carCard.sums.oilConverted') : word('carCard.sums.oilText'),
      ],
    ]),
  );
}

function cansText({ fullCans, remainderKg }: CardFigures['sums']): string {
  const [full, rest] = [String(fullCans), mass(remainderKg)];
  if (remainderKg === 0) return word('carCard.sums.fullOnly', { full });
  if (fullCans === 0) return word('carCard.sums.restOnly', { rest });
  return word('carCard.sums.fullAndRest', { full, rest });
}

function shows({ weather }: CardFigures): Leaf {
  const cell = (text: string): Leaf => leaf('td', '', text);
  const window = (side: 'low' | 'high'): Leaf =>
    leaf(
      'td',
      '',
      ...pressureSpans(weather[side]).map((span) =>
        leaf('div', '', word('carCard.shows.from', { from: span.from, to: span.to })),
      ),
    );
  const row = (name: string, ...cells: readonly Leaf[]): Leaf =>
    leaf('tr', '', leaf('th', '', name), ...cells, leaf('td', 'read', ''));
  const rest = pressure(weather.restGaugePa);
  const vent = word('carCard.shows.from', {
    from: temperature(weather.vent.fromK),
    to: temperature(weather.vent.toK),
  });
  const heads = [
    word('carCard.shows.head.low'),
    word('carCard.shows.head.high'),
    word('carCard.shows.head.read'),
  ].map((text) => leaf('th', '', text));
  return section(
    'shows',
    word('carCard.shows.title'),
    leaf(
      'table',
      '',
      leaf('thead', '', leaf('tr', '', cell(''), ...heads)),
      leaf(
        'tbody',
        '',
        row(word('carCard.shows.rest'), cell(rest), cell(rest)),
        row(word('carCard.shows.running'), window('low'), window('high')),
        row(word('carCard.shows.vent'), cell(vent), cell('')),
      ),
    ),
    leaf('p', 'inside', leaf('b', '', word('carCard.shows.inside')), ` ${word('carCard.shows.insideText')}`),
    leaf('p', 'small', word('carCard.shows.restHow')),
    leaf('p', 'small', word('carCard.shows.how')),
  );
}

function stops(inputs: CardInputs, { sums: { targetKg }, weather }: CardFigures): Leaf {
  const ambientC = inputs.ambientK - CELSIUS_ZERO_K;
  const least = LEAST_AT_REST.find(([overC]) => ambientC > overC);
  const ofR134a = filledWith(inputs) === 'R-134a' && least !== undefined;
  return section(
    'stop',
    word('carCard.stop.title'),
    list('', [
      word('carCard.stop.scale', { target: mass(targetKg) }),
      word('carCard.stop.high', { high: pressure(weather.high.toGaugePa) }),
      word('carCard.stop.low'),
      word('carCard.stop.clutch'),
      word('carCard.stop.rest', { over: pressure(OVER_REST_PA), rest: pressure(weather.restGaugePa) }),
      ...(ofR134a ? [word('carCard.stop.least', { least: pressure(least[1]) })] : []),
      word('carCard.stop.leak'),
      word('carCard.stop.unknown'),
      word('carCard.stop.fitting'),
      word('carCard.stop.noise'),
    ]),
  );
}

function cautions(inputs: CardInputs): Leaf {
  const burns = filledWith(inputs) === 'R-1234yf';
  return section(
    'cautions',
    word('carCard.cautions.title'),
    list('', [
      word('carCard.cautions.eyes'),
      word('carCard.cautions.can'),
      word('carCard.cautions.hose'),
      word('carCard.cautions.air'),
      word('carCard.cautions.fire'),
      ...(burns ? [word('carCard.cautions.burns')] : []),
      word('carCard.cautions.warm'),
      word('carCard.cautions.never'),
      word('carCard.cautions.volts'),
      word('carCard.cautions.caps'),
    ]),
  );
}

/** Of the place's own data; what one may do, who, and the rule it follows from. */
function law({ jurisdiction, converts, labelRefrigerant }: CardInputs): Leaf {
  const { acts } = jurisdictionOf(jurisdiction);
  const asked: Act[] = ['charge', 'fill-leaking', 'recover', 'buy-can', 'top-up'];
  if (labelRefrigerant === 'R-12') asked.push(converts ? 'convert' : 'handle-r12');
  const lines = asked.map((act) => {
    const { who, rule: own } = acts[act];
    const rule = lawTold(jurisdiction, act)?.rule ?? own;
    return word('carCard.law.line', { act: spoken(`carCard.law.act.${act}`), who: whoMay(who), rule });
  });
  return section(
    'law',
    word('carCard.law.title', { place: spoken(`carCard.law.place.${jurisdiction}`) }),
    list('', [...lines, word('carCard.law.vent')]),
  );
}

function whoMay(who: readonly Person[]): string {
  if (who.length === 0) return word('carCard.law.nobody');
  return who.includes('owner') ? word('carCard.law.anyone') : word('carCard.law.certified');
}

function spoken(id: string): string {
  if (!isWordId(id)) throw new RangeError(`no word "${id}"`);
  return say({ id });
}

function toWrite({ converts }: CardInputs): Leaf {
  const names = [
    word('carCard.write.port'),
    word('carCard.write.restLow'),
    word('carCard.write.restHigh'),
    word('carCard.write.runLow'),
    word('carCard.write.runHigh'),
    word('carCard.write.vent'),
    word('carCard.write.canBefore'),
    word('carCard.write.canAfter'),
    word('carCard.write.grams'),
    word('carCard.write.oil'),
    converts ? word('carCard.write.old') : word('carCard.write.leak'),
    word('carCard.write.caps'),
  ];
  return section(
    'write',
    word('carCard.write.title'),
    leaf('div', 'blanks six', ...names.map(blank)),
    leaf('div', 'blanks wide', blank(word('carCard.write.unproven'))),
  );
}
