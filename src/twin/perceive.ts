/**
 * What a person in the bay perceives now, as lines of words: gear, car, ports, hoses, cans, service tools, instruments, what is frosted
 * or wet. From readings, cues and controls only; the truth behind them has no way in.
 */
import { micronGaugeSpec } from '../equipment/instruments';
import type { SessionCore, SessionView } from '../session/corePort';
import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { type Message, type WordId, word } from '../words/words';
import { nameOf } from './nameOf';
import { searchLines } from './searchLines';
import { type Senses, sensesOf } from './senses';

export type Group = 'gear' | 'car' | 'ports' | 'hoses' | 'cans' | 'devices' | 'instruments' | 'surfaces';

export interface Perceived {
  readonly group: Group;
  readonly message: Message;
}

type Say = (id: WordId, values?: Readonly<Record<string, string>>) => void;

export function perceive(core: SessionCore, write: WriteQuantity = writeMetric): Perceived[] {
  const lines: Perceived[] = [];
  const senses = sensesOf(core);
  const view = core.view();
  const sayIn =
    (group: Group): Say =>
    (id, values) => {
      lines.push({ group, message: values ? { id, values } : { id } });
    };
  gear(sayIn('gear'), view);
  car(sayIn('car'), senses, write);
  ports(sayIn('ports'), view);
  hoses(sayIn('hoses'), view, senses);
  cans(sayIn('cans'), view, senses);
  devices(sayIn('devices'), view, senses, write);
  for (const message of searchLines(senses)) lines.push({ group: 'car', message });
  instruments(sayIn('instruments'), senses, write);
  surfaces(sayIn('surfaces'), senses);
  return lines;
}

function gear(say: Say, { worn }: SessionView): void {
  for (const item of ['goggles', 'gloves', 'overall'] as const) {
    say(worn.includes(item) ? `twin.gear.${item}On` : `twin.gear.${item}Off`);
  }
}

function car(say: Say, senses: Senses, write: WriteQuantity): void {
  const speed = senses.value('engine.rpm');
  if (speed > 0)
    say('twin.car.engineRuns', { speed: write({ source: 'engine.rpm', value: speed, unit: 'rpm' }) });
  else say(senses.isOn('car.ready') ? 'twin.car.ready' : 'twin.car.engineStands');
  say(senses.isOn('ac.on') ? 'twin.car.acOn' : 'twin.car.acOff', {
    step: String(senses.value('blower.speed')),
  });
  say(senses.isOn('clutch.turning') ? 'twin.car.clutchTurns' : 'twin.car.clutchStands');
  compressor(say, senses);
  for (const fan of senses.idsOf('fan', 'turning')) {
    const isTurning = senses.isOn(`fan.${fan}.turning`);
    say(isTurning ? 'twin.car.fanTurns' : 'twin.car.fanStands', { fan: nameOf(fan) });
  }
  if (senses.isOn('metering.hissing')) say('twin.car.hisses');
  say(senses.isOn('door.open') ? 'twin.car.doorOpen' : 'twin.car.doorShut');
  say(senses.isOn('windows.open') ? 'twin.car.windowsOpen' : 'twin.car.windowsShut');
  if (senses.isOn('chock.on')) say('twin.car.chocked');
  if (senses.isOn('recovery.arranged')) say('twin.car.licensedAtWork');
  say(senses.isOn('temperature.coldest') ? 'twin.car.coldest' : 'twin.car.notColdest');
  say(senses.isOn('air.recirculated') ? 'twin.car.airRecirculated' : 'twin.car.airFresh');
  hazards(say, senses);
}

function hazards(say: Say, senses: Senses): void {
  if (senses.isOn('heater.on')) say('twin.car.heaterBurns');
  if (senses.isOn('pit.in')) say('twin.car.inPit');
  if (senses.isOn('highVoltage.isolated')) say('twin.car.isolated');
  for (const what of senses.surfaceIds('bypass'))
    if (senses.isOn(`bypass.${what}`)) say('twin.car.bridged', { what: nameOf(what) });
  if (senses.isOn('sealerTest.running')) say('twin.car.sealerTest');
}

function compressor(say: Say, senses: Senses): void {
  const hub = senses.value('clutch.hubSpeedRatio');
  if (hub > 0 && hub < 1) say('twin.car.hubSlower', { eighths: String(8 * hub) });
  if (senses.isOn('clutch.squealing')) say('twin.car.squeals');
  if (senses.isOn('clutch.smelling')) say('twin.car.smells');
  if (senses.isOn('compressor.knocking')) say('twin.car.knocks');
  if (senses.isOn('compressor.rattling')) say('twin.car.rattles');
}

function ports(say: Say, view: SessionView): void {
  for (const { id, capOn, capLetter, covered, hose, judged } of view.ports) {
    if (covered === false) say('twin.port.uncovered', { port: id });
    if (covered) say('twin.port.covered', { port: id });
    else if (hose !== null) say('twin.port.hoseOn', { port: id, hose });
    else if (capLetter !== null) say('twin.port.capLettered', { port: id, letter: capLetter });
    else say(capOn ? 'twin.port.capOn' : 'twin.port.capOff', { port: id });
    if (judged !== null) say('twin.port.judged', { port: id, side: nameOf(judged) });
  }
}

function hoses(say: Say, view: SessionView, senses: Senses): void {
  for (const { id, port, couplerOpen, caught, route } of view.hoses) {
    if (senses.isOn(`hose.${id}.burned`)) say('twin.hose.burned', { hose: id });
    if (senses.isOn(`hose.${id}.adapter`)) say('twin.hose.adapter', { hose: id });
    if (caught) say('twin.hose.caught', { hose: id });
    else if (port === null) say('twin.hose.lies', { hose: id });
    else {
      const zones = route.length === 0 ? word('twin.hose.nowhere') : route.map(nameOf).join(', ');
      say(couplerOpen ? 'twin.hose.open' : 'twin.hose.shut', { hose: id, port, zones });
    }
  }
  if (view.hoses.every(({ id }) => id !== 'gauge-low')) return;
  const [low, high] = [senses.value('manifold.low.sixteenths'), senses.value('manifold.high.sixteenths')];
  say('twin.hose.manifold', { low: String(low), high: String(high) });
}

function cans(say: Say, view: SessionView, senses: Senses): void {
  for (const { id, onto, valveSixteenths, tiltDeg, place } of view.cans) {
    const values = { can: nameOf(id), place: word(`twin.can.${place}`), tilt: String(tiltDeg) };
    if (onto === null) say('twin.can.loose', values);
    else say('twin.can.tapped', { ...values, hose: onto, valve: String(valveSixteenths) });
    if (senses.isOn(`can.${id}.stored`)) say('twin.can.stored', { can: nameOf(id) });
    if (senses.isOn(`can.${id}.burst`)) say('twin.can.burst', { can: nameOf(id) });
    if (senses.isOn(`can.${id}.chilled`)) say('twin.can.cold', { can: nameOf(id) });
  }
}

function devices(say: Say, view: SessionView, senses: Senses, write: WriteQuantity): void {
  for (const { id, onto } of view.devices) {
    const device = nameOf(id);
    if (onto === null) say('twin.device.loose', { device });
    else if (senses.isOn(`device.${id}.running`)) say('twin.device.runs', { device, hose: onto });
    else say('twin.device.on', { device, hose: onto });
  }
  const valve = senses.value('chargingTank.valveSixteenths');
  if (!Number.isNaN(valve)) {
    const way = senses.isOn('chargingTank.inverted') ? 'tankInverted' : 'tankUpright';
    say(`twin.device.${way}`, { valve: String(valve) });
  }
  const setPa = senses.value('regulator.gaugePressurePa');
  if (!Number.isNaN(setPa))
    say('twin.device.regulator', { pressure: write({ source: 'regulator', value: setPa, unit: 'Pa' }) });
  const fill = senses.value('recoveryTank.fillRatio');
  if (!Number.isNaN(fill)) say('twin.device.fill', { eighths: String(8 * fill) });
  const leftM3 = senses.value('oilInjector.leftM3');
  if (!Number.isNaN(leftM3))
    say('twin.device.oil', { volume: write({ source: 'oilInjector', value: leftM3, unit: 'm3' }) });
  if (senses.isOn('identifier.sampling')) say('twin.device.sampling');
}

const INSTRUMENTS = [
  ['charging-gauge', 'chargingGauge.gaugePressurePa', 'Pa'],
  ['low-gauge', 'lowGauge.gaugePressurePa', 'Pa'],
  ['high-gauge', 'highGauge.gaugePressurePa', 'Pa'],
  ['air', 'airThermometer.temperatureK', 'K'],
  ['line', 'lineThermometer.temperatureK', 'K'],
  ['scale', 'scale.massKg', 'kg'],
  ['micron-gauge', 'micronGauge.absolutePressurePa', 'Pa'],
  ['recovery-scale', 'recoveryScale.massKg', 'kg'],
  ['charging-scale', 'chargingScale.massKg', 'kg'],
  ['drained-oil', 'drainedOil.volumeM3', 'm3'],
  ['gas-r134a', 'identifier.r134aShare', '1'],
  ['gas-r12', 'identifier.r12Share', '1'],
  ['gas-r1234yf', 'identifier.r1234yfShare', '1'],
  ['gas-hydrocarbon', 'identifier.hydrocarbonShare', '1'],
  ['gas-air', 'identifier.airShare', '1'],
] as const;

const isOver = (source: string, value: number): boolean =>
  source === 'micronGauge.absolutePressurePa' && value >= micronGaugeSpec.maximum - 1;

function instruments(say: Say, senses: Senses, write: WriteQuantity): void {
  for (const [channel, source, unit] of INSTRUMENTS) {
    const value = senses.value(source);
    if (!Number.isNaN(value)) {
      say('twin.instrument.reads', {
        instrument: nameOf(channel),
        reading: isOver(source, value) ? word('instrument.overRange') : write({ source, value, unit }),
      });
    }
  }
}

/** Frost and sweat are told by thirds of cover: a trace, half, all over. */
function surfaces(say: Say, senses: Senses): void {
  const told = (kind: 'frost' | 'sweat', id: string): boolean => senses.value(`${kind}.${id}`) > 0.1;
  for (const kind of ['frost', 'sweat'] as const) {
    for (const id of senses.surfaceIds(kind)) {
      if (!told(kind, id) || (kind === 'sweat' && told('frost', id))) continue;
      const cover = senses.value(`${kind}.${id}`);
      const much = cover > 0.66 ? 'all' : cover > 0.33 ? 'half' : 'trace';
      say(`twin.surface.${kind}`, { part: nameOf(id), cover: word(`twin.surface.${much}`) });
    }
  }
}
