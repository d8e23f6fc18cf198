/**
 * The way on the drawn page to each command of a plan: which form, which button. Names are taken from the words, so that
 * the same hands find the doors in every language. A command without a door here is none of a short job's.
 */

import { sessionNames } from '../../../src/app/names';
import { layoutOf } from '../../../src/layout/layouts';
import { routesOf } from '../../../src/layout/zones';
import type { Scenario } from '../../../src/session/scenario/scenario';
import { type WordId, word } from '../../../src/words/words';
import type { Hands } from './hands';
import {
  atPort,
  entries,
  gaugeSet,
  hoseRows,
  inCar,
  inForm,
  named,
  open,
  openCan,
  openCar,
  openTool,
  said,
  search,
  slider,
  thing,
  tool,
  toolOfHose,
} from './ways';

/** What the hands know of the job: the car, and where the thermometers were put. */
export interface Job {
  readonly scenario: Scenario;
  /** As an assessed trainee reads it. */
  readonly nameOf: (id: string) => string;
  readonly probes: { air: string | null; line: string | null };
}

export const jobOf = (scenario: Scenario): Job => ({
  scenario,
  nameOf: sessionNames(layoutOf(scenario.data.vehicle), 'assessed', () => null),
  probes: { air: null, line: null },
});

type Words = readonly string[];
type Door = (hands: Hands, words: Words, job: Job) => Promise<void>;

const GEAR = {
  goggles: 'work.bench.goggles',
  gloves: 'work.bench.gloves',
  overall: 'task.gear.overall',
} as const;
const toggleGear: Door = (hands, [, item]) => hands.press(tool(hands, said(GEAR[item as keyof typeof GEAR])));
const OPEN_SHUT = (to: string): string => (to === 'open' ? word('panels.car.open') : word('panels.car.shut'));
const ON_OFF = (to: string): string => (to === 'on' ? word('panels.car.on') : word('panels.car.off'));

const writeIn =
  (stage: WordId, name: (value: string) => string): Door =>
  async (hands, [, value]) => {
    await entries(hands, said(stage));
    await hands.press(inForm(hands, name(value)));
  };

const SPEEDS: Readonly<Record<string, () => string>> = {
  '0': () => word('panels.car.off'),
  '800': () => word('panels.car.idle'),
  '1500': () => word('panels.car.rpm1500'),
};

export const doors: Readonly<Record<string, Door>> = {
  wear: toggleGear,
  'take-off': toggleGear,
  door: (hands, [, to]) => inCar(hands, word('panels.car.door'), OPEN_SHUT(to)),
  windows: (hands, [, to]) => inCar(hands, word('panels.car.windows'), OPEN_SHUT(to)),
  hood: (hands, [, to]) => inCar(hands, word('panels.car.hood'), OPEN_SHUT(to)),
  chock: (hands, [, to]) =>
    inCar(hands, word('task.car.chock'), to === 'on' ? word('task.car.inPlace') : word('task.car.away')),
  ac: (hands, [, to]) => inCar(hands, word('panels.car.ac'), ON_OFF(to)),
  air: (hands, [, to]) => inCar(hands, word('panels.car.air'), said(`panels.car.${to}`)),
  blower: (hands, [, step]) =>
    inCar(hands, word('panels.car.blower'), word('panels.car.blowerStep', { step })),
  async engine(hands, [, rpm]) {
    const speed = SPEEDS[rpm];
    if (speed) return inCar(hands, word('panels.car.engine'), speed());
    await openCar(hands);
    await hands.slide(slider(hands, word('panels.car.speed')), Number(rpm));
  },
  async 'read-sheet'(hands, [, sheet], { scenario }) {
    await open(hands, word('panels.sheet.title'), named(hands, word('work.serviceInformation')));
    const paper = scenario.data.papers.find(({ id }) => id === sheet)?.title;
    const title = paper ?? (sheet === 'label' ? word('panels.sheet.label') : word('panels.sheet.pressures'));
    await hands.choose(hands.page.locator('.form').getByRole('radio', { name: title, exact: true }));
  },
  ask: writeIn('task.entries.before', (about) => said(`task.ask.${about}`)),
  'note-loop': writeIn('task.entries.found', (kind) => said(`task.loop.${kind}`)),
  'note-gas': writeIn('task.entries.found', (gas) => said(`task.gas.${gas}`)),
  'note-clutch': writeIn('task.entries.found', (doing) => said(`task.clutch.${doing}`)),
  async 'hand-over'(hands, [, told]) {
    await entries(hands, word('task.entries.handOver'));
    await hands.tick(hands.page.locator('.form').getByRole('checkbox', { name: said(`task.tell.${told}`) }));
    await hands.press(inForm(hands, word('task.tell.write')));
  },
  async look(hands, [, part]) {
    await hands.close();
    await hands.press(thing(hands, part));
    await hands.close();
  },
  async trace(hands, [, port], { nameOf }) {
    await atPort(hands, port, nameOf(port));
    await hands.press(inForm(hands, word('panels.port.trace')));
  },
  async 'judge-port'(hands, [, port, side], { nameOf }) {
    await atPort(hands, port, nameOf(port));
    const name = side === 'low' ? word('panels.port.low') : word('panels.port.high');
    await hands.choose(hands.page.locator('.form').getByRole('radio', { name, exact: true }));
  },
  async cap(hands, [, port, to], { nameOf }) {
    await atPort(hands, port, nameOf(port));
    await hands.press(inForm(hands, to === 'off' ? word('panels.port.takeCap') : word('panels.port.putCap')));
  },
  async cover(hands, [, port, to], { nameOf }) {
    await atPort(hands, port, nameOf(port));
    await hands.press(inForm(hands, to === 'off' ? word('task.port.coverOff') : word('task.port.coverOn')));
  },
  async coupler(hands, [, hose, to]) {
    await toolOfHose(hands, hose);
    const name = to === 'open' ? word('panels.hose.open') : word('panels.hose.shut');
    await hands.press(hoseRows(hands, hose).getByRole('button', { name, exact: true }));
  },
  async couple(hands, [, hose, port, through], { scenario }) {
    const layout = layoutOf(scenario.data.vehicle);
    const at = layout.ports.findIndex(({ id }) => id === port);
    const route = routesOf(layout, port).findIndex((one) => one.through.join(',') === through);
    await toolOfHose(hands, hose);
    const row = hoseRows(hands, hose).locator('.do-row').nth(at);
    if (route > 0) await hands.pick(row.locator('select'), route);
    await hands.press(row.getByRole('button'));
  },
  async uncouple(hands, [, hose]) {
    await toolOfHose(hands, hose);
    await hands.press(hoseRows(hands, hose).getByRole('button', { name: word('panels.hose.takeOff') }));
  },
  async zero(hands, [, gauge]) {
    const hose = gauge === 'charging' ? 'charging' : `gauge-${gauge}`;
    await toolOfHose(hands, hose);
    await hands.press(hoseRows(hands, hose).getByRole('button', { name: word('panels.hose.zero') }));
  },
  async purge(hands, [, hose, to]) {
    await toolOfHose(hands, hose);
    const name = to === 'open' ? word('panels.hose.purge') : word('panels.hose.purgeShut');
    await hands.press(hoseRows(hands, hose).getByRole('button', { name, exact: true }));
  },
  async manifold(hands, [, side, turn]) {
    await gaugeSet(hands);
    const name = side === 'low' ? word('panels.manifold.low') : word('panels.manifold.high');
    await hands.slide(slider(hands, name), Number(turn));
  },
  async place(hands, [, can, at]) {
    await openCan(hands, can);
    const name = at === 'hot-water' ? word('task.can.hotWater') : said(`panels.can.${at}`);
    await hands.choose(hands.page.locator('.form').getByRole('radio', { name, exact: true }));
  },
  async tap(hands, [, can, onto]) {
    await openCan(hands, can);
    await hands.press(
      inForm(hands, onto === 'charging' ? word('panels.can.charging') : word('panels.can.utility')),
    );
  },
  async untap(hands, [, can]) {
    await openCan(hands, can);
    await hands.press(inForm(hands, word('panels.can.untap')));
  },
  async 'can-valve'(hands, [, can, turn]) {
    await openCan(hands, can);
    await hands.slide(slider(hands, word('panels.can.valve')), Number(turn));
  },
  async tilt(hands, [, can, degrees]) {
    await openCan(hands, can);
    await hands.slide(slider(hands, word('panels.can.tilt')), Number(degrees));
  },
  async shake(hands, [, can]) {
    await openCan(hands, can);
    await hands.press(inForm(hands, word('panels.can.shake')));
  },
  async 'mark-can'(hands, [, can, grams]) {
    await openCan(hands, can);
    const fold = hands.page.locator('.form details', { hasText: word('task.can.keep') });
    if ((await fold.getAttribute('open')) === null) await hands.press(fold.locator('summary'));
    await hands.write(fold.locator('input'), grams);
    await hands.press(inForm(hands, word('task.can.mark')));
  },
  async 'store-can'(hands, [, can]) {
    await openCan(hands, can);
    const fold = hands.page.locator('.form details', { hasText: word('task.can.keep') });
    if ((await fold.getAttribute('open')) === null) await hands.press(fold.locator('summary'));
    await hands.press(inForm(hands, word('task.can.store')));
  },
  async 'probe-air'(hands, [, place], { probes, nameOf }) {
    await openTool(hands, word('work.bench.air'));
    await hands.press(inForm(hands, nameOf(place)));
    probes.air = place;
  },
  async 'probe-line'(hands, [, place], { probes, nameOf }) {
    await openTool(hands, word('work.bench.line'));
    await hands.press(hands.page.locator('.form').getByRole('button', { name: nameOf(place), exact: true }));
    probes.line = place;
  },
  async identify(hands, [, port], { scenario }) {
    await openTool(hands, word('panels.service.identifier'));
    const at = layoutOf(scenario.data.vehicle).ports.findIndex(({ id }) => id === port);
    await hands.press(hands.page.locator('.form .stack .stack button').nth(at));
  },
  async sniff(hands, [, place]) {
    await openTool(hands, word('panels.service.detector'));
    await search(hands, place, word('panels.search.lead'));
  },
  async soap(hands, [, place]) {
    await openTool(hands, word('panels.service.soap'));
    await search(hands, place, word('panels.search.putSoap'));
  },
  async replace(hands, [, part], { nameOf }) {
    await open(hands, word('panels.cause.title'), named(hands, word('work.decide.else')));
    const fold = hands.page.locator('.form details', { hasText: word('panels.cause.replace') }).first();
    if ((await fold.getAttribute('open')) === null) await hands.press(fold.locator('summary'));
    await hands.press(inForm(hands, word('panels.cause.doReplace', { part: nameOf(part) })));
  },
  async 'note-reading'(hands, [, channel], { probes, nameOf }) {
    await open(hands, word('panels.finding.title'), named(hands, word('work.card.write')));
    const probe = channel === 'air' || channel === 'line' ? probes[channel] : null;
    const chips = hands.page.locator('.form .chip');
    await hands.press(chips.filter({ hasText: nameOf(probe ?? channel) }).first());
    await hands.press(named(hands, word('panels.finding.write')));
  },
  async diagnose(hands, [, cause, sure], { nameOf }) {
    await open(hands, word('panels.cause.title'), named(hands, word('work.decide.else')));
    const radio = hands.page.getByRole('radio', { name: nameOf(cause), exact: true, includeHidden: true });
    // its group may still be folded
    const group = hands.page.locator('.form details.group').filter({ has: radio });
    if ((await group.count()) > 0 && (await group.getAttribute('open')) === null)
      await hands.press(group.locator('summary'));
    await hands.tick(radio);
    const how = { sure: 'isSure', likely: 'likely', open: 'open' }[sure];
    await hands.press(hands.page.locator('.form .seg3 button', { hasText: said(`panels.cause.${how}`) }));
    await hands.press(named(hands, word('panels.cause.write')));
  },
  async decide(hands, [, answer]) {
    await hands.close();
    if (answer === 'refer') {
      await open(hands, word('panels.refer.title'), named(hands, word('work.decide.refer')));
      return hands.press(named(hands, word('panels.refer.write')));
    }
    const names = { charge: 'charge', 'do-not-charge': 'leave', 'stop-charging': 'stop' };
    await hands.press(named(hands, said(`work.decide.${names[answer as keyof typeof names]}`)));
  },
  async finish(hands) {
    await open(
      hands,
      word('panels.finish.title'),
      hands.page.locator('.dec').getByRole('button', { name: word('work.decide.finish') }),
    );
    await hands.press(inForm(hands, word('panels.finish.go')));
  },
};
