/** Rows for the rules of hazards: what breaks each, and what comes near and does not. */
import { at, type Case, ev, ON, open } from './ruleCases';

/** Broken by an event, not broken by one that came before it and led nowhere. */
const byEvent = (before: ReturnType<typeof ev>, broken: ReturnType<typeof ev>): Case => ({
  broken: [at(0, {}, before), at(10, {}, broken)],
  kept: [at(0, {}, before)],
});
const recovery = ev('device-started', 'recovery-machine');
const running = { 'engine.rpm': 800 };

export const hazardCases: Readonly<Record<string, Case>> = {
  // The same ppm breathed in the room is the other rule.
  pitGas: {
    broken: [at(0, { 'pit.in': ON }), at(10, {}, ev('gas-breathed', 'pit'))],
    kept: [at(0, { 'pit.in': ON }), at(10, {}, ev('gas-breathed', 'room'))],
  },
  roomGas: {
    broken: [at(0, {}, open), at(10, {}, ev('gas-breathed', 'room'))],
    kept: [at(0, {}, open), at(10, {}, ev('gas-breathed', 'pit'))],
  },
  flameGas: {
    broken: [at(0, { 'heater.on': ON }, open), at(10, {}, ev('decomposed', 'R-134a'))],
    kept: [at(0, { 'heater.on': ON }, open)],
  },
  sparkGas: {
    broken: [at(0, { 'loop.flammable': ON }, open), at(10, {}, ev('ignited', 'heater'))],
    kept: [at(0, { 'loop.flammable': ON }, open)],
    others: [
      {
        broken: [at(0, { 'loop.flammable': ON }, ev('unrated-with-flammable', 'recovery-machine'))],
        kept: [at(0, { 'loop.flammable': ON }, recovery)],
      },
    ],
  },
  wrongGas: byEvent(ev('device-attached', 'oxygen'), ev('wrong-gas-in', 'oxygen')),
  forcedFitting: byEvent(ev('adapter-on', 'gauge-high'), ev('mismatch-defeated', 'gauge-high')),
  highVoltage: {
    broken: [at(0, {}, ev('loop-opened', 'compressor'), ev('live-touched', 'compressor'))],
    kept: [at(0, { 'highVoltage.volts': 350 }, ev('loop-opened', 'condenser'))],
    others: [
      {
        broken: [at(0, {}, ev('isolated'))],
        kept: [at(0, { 'person.highVoltageTrained': ON }, ev('isolated'))],
      },
    ],
  },
  oilInsulates: {
    broken: [at(0, {}, ev('oil-injected')), at(10, {}, ev('insulation-lost'))],
    kept: [at(0, { 'highVoltage.isolated': ON }, ev('oil-injected'))],
  },
  canBurst: byEvent(ev('can-placed', 'can-1'), ev('can-burst', 'can-1')),
  canWarm: byEvent(ev('can-placed', 'can-1'), ev('can-overheated', 'can-1')),
  tankOverfilled: byEvent(recovery, ev('tank-overfilled')),
  // Air in the tank is another matter.
  cleanTank: {
    broken: [at(0, {}, recovery), at(10, {}, ev('tank-contaminated', 'foreign'))],
    kept: [at(0, {}, recovery), at(10, {}, ev('tank-contaminated', 'air'))],
  },
  gasMixed: byEvent(ev('can-open-to', 'low'), ev('gas-mixed')),
  bridgedHigh: {
    broken: [at(0, { 'bypass.high-switch': ON }), at(10, {}, ev('ran-bridged', 'high-switch'))],
    kept: [at(0, { 'bypass.high-switch': ON }), at(10, {}, ev('ran-bridged', 'low-switch'))],
  },
  bridgedLow: {
    broken: [at(0, { 'bypass.low-switch': ON }), at(10, {}, ev('ran-bridged', 'low-switch'))],
    kept: [at(0, { 'bypass.low-switch': ON }), at(10, {}, ev('ran-bridged', 'high-switch'))],
  },
  fanHands: byEvent(ev('fan-by-itself'), ev('hand-in-fan')),
  looseClothes: {
    broken: [at(0, running), at(10, {}, ev('loose-near-belt'))],
    kept: [at(0, running), at(10, {}, ev('coupler-shut'))],
  },
  hotHose: byEvent(ev('hose-on-hot', 'charging'), ev('hose-burned', 'charging')),
  blownOff: byEvent(open, ev('blown-off')),
  coldBurn: byEvent(ev('sprayed'), ev('cold-on-skin')),
  fedStanding: {
    broken: [at(0, { ...running, 'ac.on': ON }, ev('can-open-to', 'low')), at(10, {}, ev('fed-standing'))],
    kept: [at(0, { ...running, 'ac.on': ON }, ev('can-open-to', 'low'))],
  },
  sealerFouls: byEvent(recovery, ev('machine-fouled')),
};
