/** What rules, deliveries and watches are written with: measures, events, watches, the forms of conditions and rules. */
import { DOMAINS } from '../../../shared/schema/domains';
import { SEVERITIES } from '../../../shared/schema/rubric';
import { eventIds } from '../../session/conditions/eventIds';
import { measureList } from '../../session/record/measures';
import { watches } from '../../session/watches/registry';

export const listMeasures = () => measureList.map(({ id, unit }) => ({ id, unit }));

export const listEvents = () => eventIds.map((id) => ({ id, condition: { event: id } }));

export const listWatches = () =>
  watches.map((watch) => ({ ...watch, notable: 'notable' in watch ? watch.notable : null }));

/** Each with an example of itself; `*` in a signal stands for one part of its id. */
export const listConditions = () => [
  { id: 'over', example: { signal: 'highSide.gaugePressurePa', over: '1900 kPa' } },
  { id: 'under', example: { signal: 'lowSide.gaugePressurePa', under: '100 kPa' } },
  { id: 'is', example: { signal: 'hose.*.couplerOpen', is: 'on' } },
  { id: 'event', example: { event: 'looked', subject: 'fan' } },
  {
    id: 'all',
    example: {
      all: [
        { signal: 'ac.on', is: 'on' },
        { signal: 'engine.rpm', over: 600 },
      ],
    },
  },
  { id: 'any', example: { any: [{ event: 'diagnosed' }, { event: 'replaced' }] } },
  { id: 'not', example: { not: { signal: 'gear.goggles', is: 'on' } } },
];

/** The five forms of a rule, and the two conditions any of them may have besides. */
export const listForms = () => [
  { id: 'never', example: { never: { signal: 'hose.*.caught', is: 'on' } } },
  { id: 'done', example: { done: { event: 'looked', subject: 'fan' } } },
  { id: 'before', example: { before: { first: { event: 'looked' }, then: { event: 'diagnosed' } } } },
  {
    id: 'while',
    example: {
      while: {
        during: { signal: 'engine.rpm', over: 600 },
        condition: { signal: 'clutch.turning', is: 'on' },
        for: '3 min',
      },
    },
  },
  { id: 'outcome', example: { outcome: { measure: measureList[0].id, full: 0, zero: 1 } } },
  { id: 'needs', example: { needs: { event: 'tapped' } } },
  { id: 'asked', example: { asked: { event: 'decided', subject: 'charge' } } },
];

export const listDomains = () => DOMAINS.map((id) => ({ id, severities: SEVERITIES }));
