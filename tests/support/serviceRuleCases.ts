/** Rows for the rules of recovery, vacuum and tanks: what breaks each, and what just does not. */
import { at, type Case, charged, ev, ON, open, running } from './ruleCases';

const pump = ev('device-started', 'vacuum-pump');
const blown = ev('refrigerant-pumped-out');
const recovery = ev('device-started', 'recovery-machine');
const tankIn = ev('tank-open-to', 'high');
const tankStands = { 'chargingTank.valveSixteenths': 1, 'manifold.high.sixteenths': 1 };
const drawnDown = { 'lowSide.gaugePressurePa': -14_000, 'highSide.gaugePressurePa': -14_000 };
const pumpedDown = { 'lowSide.pressurePa': 5000, 'loop.massKg': 0.001, 'device.micron-gauge.attached': ON };

export const serviceCases: Readonly<Record<string, Case>> = {
  // Tank first, engine afterwards; or the manifold shut in between.
  tankOnRunning: {
    broken: [
      at(0, { ...tankStands, 'hose.charging.couplerOpen': ON }, ev('tank-opened'), tankIn),
      at(10, { 'engine.rpm': 800 }, ev('engine-started')),
    ],
    kept: [
      at(0, tankStands, ev('tank-opened')),
      at(5, { 'engine.rpm': 800 }, ev('engine-started')),
      at(8, { 'hose.charging.couplerOpen': ON, 'engine.rpm': 0 }, tankIn),
      at(10, { 'manifold.high.sixteenths': 0, 'engine.rpm': 800 }, ev('engine-started')),
      at(20, {}, ev('tank-open-to', 'low')),
    ],
  },
  pumpOnCharge: {
    broken: [at(0, {}, pump), at(10, { ...drawnDown, 'highSide.gaugePressurePa': 20_001 }, blown)],
    kept: [
      at(0, {}, pump),
      at(10, { 'lowSide.gaugePressurePa': 20_000, 'highSide.gaugePressurePa': 20_000 }, blown),
    ],
  },
  letOutByHand: {
    broken: [at(0, {}, open)],
    brokenBy: { 'vented.byHandKg': 0.026 },
    kept: [at(0, {}, open)],
    keptBy: { 'vented.byHandKg': 0.025 },
  },
  identifiedFirst: {
    broken: [at(0), at(10, {}, recovery), at(20, {}, ev('sample-identified'))],
    kept: [at(0, {}, ev('sample-identified')), at(10, {}, recovery)],
  },
  staticRead: {
    broken: [at(0, { 'engine.rpm': 800 }, ev('noted', 'high-gauge')), at(10, { 'engine.rpm': 0 }, recovery)],
    kept: [at(0, {}, ev('noted', 'high-gauge')), at(10, {}, recovery)],
  },
  recoveredDeep: {
    broken: [at(0, { ...drawnDown, 'highSide.gaugePressurePa': -13_600 }), at(10, {}, pump)],
    kept: [at(0, drawnDown), at(10, {}, pump)],
  },
  evacuatedDeep: {
    broken: [at(0, { 'lowSide.pressurePa': 533 }), at(10, {}, tankIn)],
    kept: [at(0, { 'lowSide.pressurePa': 532 }), at(10, {}, tankIn)],
  },
  // Five minutes less a step; or with the pump still running.
  vacuumHeld: {
    broken: [
      at(0, { ...pumpedDown, 'lowSide.pressurePa': 4999 }),
      at(14_999),
      at(15_000, { 'device.vacuum-pump.running': ON }),
      at(40_000),
    ],
    kept: [at(0, { ...pumpedDown, 'lowSide.pressurePa': 4999 }), at(14_999), at(15_000)],
  },
  chargedToLabel: {
    broken: [at(0, {}, tankIn)],
    brokenBy: { 'charge.errorKg': 0.0201 },
    kept: [at(0, {}, tankIn)],
    keptBy: { 'charge.errorKg': 0.02 },
  },
  chargeSaid: {
    broken: [at(0, {}, ev('decided', 'refer')), at(10, {}, tankIn)],
    kept: [at(0, {}, ev('decided', 'charge')), at(10, {}, tankIn)],
  },
  provedAfter: {
    broken: [
      at(0, { ...running, ...charged, 'vent.temperatureK': 287 }),
      at(2950, {}),
      at(2951, { 'vent.temperatureK': 288 }),
    ],
    kept: [at(0, { ...running, ...charged, 'vent.temperatureK': 287 }), at(2999), at(3000)],
  },
};
