/**
 * Every watch of a session, in the order in which edges of one moment reach the controller. Notable are only things that
 * a person in the bay would see or hear: no watch that stops the clock may tell the truth behind the readings.
 */
import type { WatchSpec } from './watch';

const on = (signal: string) => ({ signal, is: 'on' }) as const;
const feeding = {
  all: [{ signal: 'can.*.valveSixteenths', over: 0 }, on('can.*.tapped'), on('hose.*.couplerOpen')],
} as const;

export const watches = [
  { id: 'portUncapped', when: { signal: 'cap.*.on', is: 'off' } },
  { id: 'hoseCoupled', when: on('hose.*.coupled') },
  { id: 'couplerOpen', when: on('hose.*.couplerOpen') },
  { id: 'canTapped', when: on('can.*.tapped') },
  { id: 'canFeeding', when: feeding },
  { id: 'engineRunning', when: { signal: 'engine.rpm', over: 0 } },
  { id: 'exposed', when: { all: [on('hose.*.couplerOpen'), { signal: 'gear.goggles', is: 'off' }] } },
  { id: 'clutchStill', when: { signal: 'clutch.turning', is: 'off' }, heldS: 20, notable: 'fall' },
  { id: 'tripped', when: { event: 'high-pressure-trip' }, notable: 'rise' },
  { id: 'relieved', when: { event: 'relief-opened' }, notable: 'rise' },
  { id: 'caught', when: on('hose.*.caught'), notable: 'rise' },
  { id: 'sprayed', when: { event: 'sprayed' }, notable: 'rise' },
  {
    id: 'chargingGaugeRests',
    rest: 'chargingGauge.gaugePressurePa',
    during: on('hose.charging.couplerOpen'),
    within: 3000,
    heldS: 20,
    notable: 'rise',
  },
  {
    id: 'lowGaugeRests',
    rest: 'lowGauge.gaugePressurePa',
    during: on('hose.gauge-low.couplerOpen'),
    within: 3000,
    heldS: 20,
    notable: 'rise',
  },
  {
    id: 'highGaugeRests',
    rest: 'highGauge.gaugePressurePa',
    during: on('hose.gauge-high.couplerOpen'),
    within: 15_000,
    heldS: 20,
    notable: 'rise',
  },
  { id: 'scaleRests', rest: 'scale.massKg', within: 0.0015, heldS: 30, notable: 'rise' },
  {
    id: 'airThermometerRests',
    rest: 'airThermometer.temperatureK',
    within: 0.25,
    heldS: 30,
    notable: 'rise',
  },
] as const satisfies readonly WatchSpec[];

export type WatchId = (typeof watches)[number]['id'];
