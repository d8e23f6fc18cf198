/** Plans for the rules of the law, of training and of a conversion's label. */
import type { ScenarioData } from '../../shared/schema/scenario';
import {
  bench,
  DRESSED,
  ELECTRIC,
  GAUGES,
  type HazardPlan,
  holding,
  LOW_OPEN,
  PICKUP,
  recovering,
  SEDAN,
} from './hazardCars';

/** The law: the same deed where it is forbidden and where it is not. */
export function lawPlans(): HazardPlan[] {
  const use = { rubric: { use: ['service', 'hazards', 'lawful'] } };
  const feed = [...LOW_OPEN.slice(0, 2), 'tap can-1 charging', LOW_OPEN[2], 'can-valve can-1 1'];
  const feedA = feed.map((line) => line.replace('port-b', 'port-a'));
  const empty = { contents: { ...holding('R-134a', '480 g').contents, state: 'evacuated' as const } };
  const without = (rule: string) => ({ rubric: { ...use.rubric, drop: [rule] } });
  const in_ = (jurisdiction: ScenarioData['jurisdiction'], person: ScenarioData['person']) => ({
    ...use,
    jurisdiction,
    person,
  });
  const leaking = { faults: [{ fault: 'leak-condenser', severity: 0.6 }] };
  const recoverer = { ...SEDAN, ...bench({ tools: ['recovery-machine'] as const as never }) };
  const converted = {
    ...{ ...PICKUP, contents: { ...PICKUP.contents, state: 'evacuated' as const } },
    ...{ ...bench({ refrigerant: 'R-134a' }), found: { converted: true } },
  };
  const otherGas = { ...empty, ...bench({ refrigerant: 'R-1234yf', tools: ['loose-adapter'] }) };
  const adapted = [...DRESSED, 'adapter charging on', ...feed];
  return [
    {
      rule: 'lawService',
      ...{ on: in_('australia', 'owner'), broken: [...DRESSED, ...LOW_OPEN] },
      ...{ nearOn: in_('united-states', 'owner'), near: [...DRESSED, ...LOW_OPEN] },
    },
    {
      rule: 'lawCharge',
      ...{ on: { ...empty, ...in_('european-union', 'owner') }, broken: [...DRESSED, ...feed] },
      ...{ nearOn: { ...empty, ...in_('european-union', 'certified') }, near: [...DRESSED, ...feed] },
    },
    {
      rule: 'lawTopUp',
      ...{ on: in_('australia', 'certified'), broken: [...DRESSED, ...feed] },
      ...{ nearOn: { ...empty, ...in_('australia', 'certified') }, near: [...DRESSED, ...feed] },
    },
    {
      rule: 'lawLeakFilled',
      ...{ on: { ...leaking, ...in_('united-kingdom', 'certified') }, broken: [...DRESSED, ...feed] },
      ...{ nearOn: in_('united-kingdom', 'certified'), near: [...DRESSED, ...feed] },
    },
    {
      rule: 'lawRecover',
      ...{
        on: { ...recoverer, ...in_('european-union', 'owner') },
        broken: [...DRESSED, ...recovering('1 s')],
      },
      ...{
        nearOn: { ...recoverer, ...in_('united-states', 'owner') },
        near: [...DRESSED, ...recovering('1 s')],
      },
    },
    {
      rule: 'lawOldGas',
      ...{ on: { ...PICKUP, ...in_('united-states', 'owner') }, broken: [...DRESSED, ...feedA] },
      ...{ nearOn: { ...PICKUP, ...in_('united-states', 'certified') }, near: [...DRESSED, ...feedA] },
    },
    {
      // who may charge may convert everywhere: looked at without the other rule
      rule: 'lawConvert',
      ...{
        on: { ...converted, ...in_('european-union', 'owner'), ...without('lawCharge') },
        broken: [...DRESSED, ...feedA],
      },
      ...{ nearOn: { ...converted, ...in_('united-states', 'owner') }, near: [...DRESSED, ...feedA] },
    },
    {
      // another gas has other fittings: looked at without the rule about those
      rule: 'lawOtherGas',
      ...{
        on: { ...otherGas, ...in_('united-states', 'certified'), ...without('forcedFitting') },
        broken: adapted,
      },
      near: adapted.slice(0, -2),
    },
    {
      rule: 'beyondTraining',
      ...{ on: { ...ELECTRIC, ...use }, broken: [...DRESSED, ...GAUGES] },
      near: [...DRESSED, ...GAUGES.slice(0, 2), 'uncouple gauge-low'],
    },
    {
      rule: 'convertedToOwn',
      on: { ...PICKUP, rubric: { use: ['service', 'hazards', 'conversion'] } },
      broken: [...DRESSED, 'label-conversion R-1234yf 850 PAG 240'],
      // Written anew before the car is handed over.
      near: [...DRESSED, 'label-conversion R-1234yf 850 PAG 240', 'label-conversion R-134a 850 PAG 240'],
    },
  ];
}
