/** Rows for the rules of lessons on blowers, filters, fronts and hubs: what breaks each, and what just does not. */
import { at, type Case, ev, ON } from './ruleCases';

const cooling = { 'engine.rpm': 1500, 'ac.on': ON };
const turning = { ...cooling, 'clutch.turning': ON };
const airNoted = ev('noted', 'air');
const atVent = { ...cooling, 'probe.air.centre-vent': ON, 'blower.speed': 4 };
const hubLooked = ev('looked', 'clutch');

/** Seen a moment after what it had to come before, and a moment before. */
const seenFirst = (seen: ReturnType<typeof ev>, then: ReturnType<typeof ev>): Case => ({
  broken: [at(0, {}, then), at(10, {}, seen)],
  kept: [at(0, {}, seen), at(10, {}, then)],
});

/** Cold for a step less than `steps`, then for `steps`. */
const coldFor = (steps: number, set: Readonly<Record<string, number>>, under: number): Case => ({
  broken: [
    at(0, { ...set, 'vent.temperatureK': under - 0.1 }),
    at(steps - 1, { 'vent.temperatureK': under }),
    at(steps, { 'vent.temperatureK': under - 0.1 }),
    at(2 * steps - 1),
  ],
  kept: [at(0, { ...set, 'vent.temperatureK': under - 0.1 }), at(steps - 1), at(steps)],
});

export const airCases: Readonly<Record<string, Case>> = {
  blowerLooked: seenFirst(ev('looked', 'blower'), ev('replaced', 'blower')),
  filterLooked: seenFirst(ev('looked', 'cabin-filter'), ev('replaced', 'cabin-filter')),
  breathNoted: {
    broken: [at(0, { ...atVent, 'vent.airflowRatio': 0.3 }, airNoted), at(10, {}, ev('diagnosed'))],
    kept: [at(0, { ...atVent, 'vent.airflowRatio': 0.29 }, airNoted), at(10, {}, ev('diagnosed'))],
    others: [
      {
        broken: [at(0, { ...atVent, 'blower.speed': 3 }, airNoted), at(10, {}, ev('replaced', 'blower'))],
        kept: [at(0, atVent, airNoted), at(10, {}, ev('replaced', 'blower'))],
      },
    ],
  },
  iceSeen: {
    broken: [at(0, { ...atVent, 'vent.airflowRatio': 0.33 }, airNoted), at(10, {}, ev('diagnosed'))],
    kept: [at(0, { ...atVent, 'vent.airflowRatio': 0.32 }, airNoted), at(10, {}, ev('diagnosed'))],
    others: [
      {
        broken: [at(0, { ...atVent, 'ac.on': 0 }, airNoted), at(10, {}, ev('replaced', 'cabin-filter'))],
        kept: [at(0, atVent, airNoted), at(10, {}, ev('replaced', 'cabin-filter'))],
      },
    ],
  },
  provedBreath: coldFor(9000, { ...cooling, 'blower.speed': 4, 'vent.airflowRatio': 0.91 }, 288.15),
  // Air enough for ten minutes on the road, and with the new filter in.
  provedThawed: {
    broken: [
      at(0, { ...cooling, 'engine.rpm': 2500, 'blower.speed': 4, 'vent.airflowRatio': 0.86 }),
      at(40_000, { 'part.cabin-filter.replaced': ON }),
      at(69_999, { 'vent.airflowRatio': 0.85 }),
    ],
    kept: [
      at(0, { ...cooling, 'engine.rpm': 2500, 'blower.speed': 4, 'vent.airflowRatio': 0.86 }),
      at(10, { 'part.cabin-filter.replaced': ON }),
      at(30_010),
    ],
  },
  frontSeen: {
    ...seenFirst(ev('looked', 'condenser'), ev('cleaned', 'condenser')),
    others: [seenFirst(ev('looked', 'condenser'), ev('diagnosed'))],
  },
  frontCleaned: {
    broken: [at(0, {}, ev('cleaned', 'cabin-filter'))],
    kept: [at(0, {}, ev('cleaned', 'condenser'))],
  },
  // Three minutes at idle, the front clean: not with dirt left, not at a high idle.
  provedHead: {
    broken: [
      at(0, { ...turning, 'engine.rpm': 800, 'vent.airflowRatio': 1, 'dirt.condenser': 0.1 }),
      at(20_000, { 'dirt.condenser': 0, 'engine.rpm': 1000 }),
      at(40_000, { 'engine.rpm': 800, 'highSide.gaugePressurePa': 1_499_000 }),
      at(48_999, { 'highSide.gaugePressurePa': 1_500_000 }),
    ],
    kept: [
      at(0, {
        ...turning,
        'engine.rpm': 800,
        'vent.airflowRatio': 1,
        'highSide.gaugePressurePa': 1_499_000,
      }),
      at(9000),
    ],
  },
  cyclingNoted: {
    broken: [at(0, {}, ev('clutch-noted', 'standing')), at(10, {}, ev('decided', 'charge'))],
    kept: [at(0, {}, ev('clutch-noted', 'cycling')), at(10, {}, ev('decided', 'charge'))],
  },
  cutOutRead: {
    broken: [at(0, cooling, ev('noted', 'low-gauge')), at(10, {}, ev('replaced', 'cycling-switch'))],
    kept: [at(0, turning, ev('noted', 'low-gauge')), at(10, {}, ev('replaced', 'cycling-switch'))],
  },
  'nothing-clicks/hubSeen': {
    broken: [at(0, { 'ac.on': ON }, hubLooked), at(10, cooling, ev('replaced', 'clutch'))],
    kept: [at(0, cooling, hubLooked), at(10, {}, ev('replaced', 'clutch'))],
  },
  // Nobody is asked to have it seen before a part goes in; before anything is named, everybody.
  'leaves-and-a-slipping-hub/hubSeen': {
    broken: [at(0, { 'engine.rpm': 1500 }, hubLooked), at(10, cooling, ev('decided', 'do-not-charge'))],
    kept: [at(0, {}, ev('replaced', 'clutch')), at(5, cooling, hubLooked), at(10, {}, ev('diagnosed'))],
  },
  hubSeenOff: {
    broken: [at(0, cooling, ev('looked', 'compressor')), at(10, {}, ev('decided', 'do-not-charge'))],
    kept: [at(0, { 'engine.rpm': 800 }, ev('looked', 'compressor')), at(10, {}, ev('diagnosed'))],
  },
  'nothing-clicks/provedTurning': coldFor(3000, { ...turning, 'vent.airflowRatio': 1 }, 290.15),
  'click-click/provedTurning': coldFor(
    3000,
    { ...turning, 'vent.airflowRatio': 1, 'part.cycling-switch.replaced': ON },
    287.15,
  ),
  'leaves-and-a-slipping-hub/provedTurning': coldFor(
    3000,
    { ...turning, 'vent.airflowRatio': 0.81, 'part.clutch.replaced': ON },
    294.15,
  ),
};
