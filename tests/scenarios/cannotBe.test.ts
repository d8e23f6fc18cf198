/** `check`: a scenario whose faults, bench or answer cannot be is refused, each with its place and with what there is. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faults } from '../../src/faults/registry';
import { vehicleIds, vehicleOf } from '../../src/loop/car/vehicles';
import { checkScenario } from '../../src/scoring/checkScenario';
import { rubrics } from '../../src/session/scenario/rubrics';

describe('a scenario that cannot be, told with its place', () => {
  const hurry = readFileSync('scenarios/filled-in-a-hurry.yaml', 'utf8');
  const air = hurry.split('\n').find((line) => line.includes('fault: air-in-loop')) ?? 'no air';
  const errorsOf = (was: string, is: string): string[] => {
    expect(hurry).toContain(was);
    return checkScenario('h.yaml', hurry.replace(was, is), rubrics)
      .filter(({ level }) => level === 'error')
      .map(({ at, code, message }) => `${at} ${code} ${message}`);
  };
  const hidden = (...faults: string[]): string[] =>
    errorsOf(air, faults.map((fault) => `  - { fault: ${fault} }`).join('\n'));

  it.each<[name: string, found: () => string[], told: RegExp]>([
    [
      'a fault twice',
      () => hidden('air-in-loop, severity: 0.75', 'air-in-loop, severity: 0.5'),
      /^h\.yaml:21:\d+ SCN103 .*"air-in-loop" stands twice; once/,
    ],
    [
      'a leak twice at its usual place',
      () => hidden('leak, severity: 0.2', 'leak, severity: 0.5, site: condenser'),
      /^h\.yaml:21:\d+ SCN103/,
    ],
    [
      'two that exclude each other',
      () => hidden('low-charge, severity: 0.5', 'overcharge, severity: 0.5'),
      /^h\.yaml:21:\d+ SCN104 "overcharge" and "low-charge" cannot be in one car together; leave one out/,
    ],
    ...[
      ['clutch-not-engaging', 'clutch-slipping'],
      ['clutch-slipping', 'clutch-stuck-on'],
      ['clutch-stuck-on', 'clutch-not-engaging'],
    ].map(([one, other]): [string, () => string[], RegExp] => [
      `${one} beside ${other}`,
      () => hidden(`${one}, severity: 0.5`, `${other}, severity: 0.5`),
      /^h\.yaml:21:\d+ SCN104/,
    ]),
    [
      'a fault that no car of the kind can have',
      () => hidden('missing-orifice, severity: 0.5'),
      /^h\.yaml:20:\d+ SCN108 the fault "missing-orifice" cannot be in the hatchback: it has an expansion valve, not an orifice tube/,
    ],
    [
      'a site for what has no place',
      () => hidden('air-in-loop, severity: 0.75, site: moon'),
      /^h\.yaml:20:\d+ SCN105 the fault "air-in-loop" has no place of its own; leave its site out/,
    ],
    [
      'a gas for what mixes none in',
      () => hidden('air-in-loop, severity: 0.75, gas: hydrocarbon'),
      /^h\.yaml:20:\d+ SCN107 "hydrocarbon" is nothing that "air-in-loop" mixes into this car/,
    ],
    [
      "a mixture with the car's own gas",
      () => hidden('mixed-refrigerant, severity: 0.75, gas: R-134a'),
      /^h\.yaml:20:\d+ SCN107 "R-134a" is nothing that "mixed-refrigerant" mixes into this car/,
    ],
    [
      'a site that no car has',
      () => hidden('leak, severity: 0.5, site: moon'),
      /^h\.yaml:20:\d+ SCN106 "moon" is no place for "leak" on this car; there is condenser, drier/,
    ],
    [
      'a site of the wrong kind',
      () => hidden('leak-evaporator, severity: 0.5, site: condenser'),
      /^h\.yaml:20:\d+ SCN106 .*; there is evaporator$/,
    ],
    [
      'a tool twice',
      () => errorsOf('    - dye\n', '    - dye\n    - soap\n'),
      /^h\.yaml:\d+:7 SCN122 "soap" stands twice; list it once/,
    ],
    [
      'an unknown tool beside one that stands twice',
      () => errorsOf('    - dye\n', '    - dye\n    - vacum-pump\n    - soap\n'),
      /^h\.yaml:\d+:7 SCN003 bench\.tools\.11: .*not "vacum-pump"; did you mean "vacuum-pump"\?/,
    ],
    [
      'a hose set twice',
      () => errorsOf('[gauge-set]', '[gauge-set, charging, gauge-set]'),
      /^h\.yaml:\d+:\d+ SCN122 "gauge-set" stands twice/,
    ],
    [
      'two cans of one id',
      () =>
        errorsOf('  tools:\n', '    - { id: can-1, net: 10 oz, printed: 12 oz, tare: 110 g }\n  tools:\n'),
      /^h\.yaml:\d+:\d+ SCN122 "can-1" stands twice/,
    ],
    [
      'a can called like a hose',
      () => errorsOf('{ id: can-1', '{ id: charging'),
      /^h\.yaml:\d+:\d+ SCN123 a can cannot be called "charging"/,
    ],
    [
      'a can with more in it than it says',
      () => errorsOf('net: 10 oz', 'net: 13 oz'),
      /^h\.yaml:\d+:\d+ SCN125 .*13 oz, is over its printed total, 12 oz/,
    ],
    [
      'an answer that leaves a hidden fault out',
      () => errorsOf('causes: [air-in-loop]', 'causes: [low-charge]'),
      /^h\.yaml:63:\d+ SCN124 .*"air-in-loop"; add it/,
    ],
    [
      'an answer that says nothing is wrong where something is',
      () => errorsOf('causes: [air-in-loop]', 'causes: [air-in-loop, nothing-wrong]'),
      /^h\.yaml:63:\d+ SCN124 .*cannot name nothing-wrong/,
    ],
    [
      'an answer that names a fault where nothing is hidden',
      () => errorsOf(`faults:\n${air}`, 'faults: []'),
      /^h\.yaml:62:\d+ SCN124 no fault is hidden .*\[nothing-wrong\]/,
    ],
  ])('%s', (_, found, told) => {
    expect(found()[0]).toMatch(told);
  });

  const partsOf = (file: string, was: string, is: string) => {
    const text = readFileSync(`scenarios/${file}.yaml`, 'utf8');
    expect(text).toContain(was);
    return checkScenario('h.yaml', text.replace(was, is), rubrics).filter(({ message }) =>
      message.includes('mends nothing'),
    );
  };

  it('a part of the answer that mends nothing while the fault waits for another, with that one to write', () => {
    const [found, ...more] = partsOf('stuck', 'parts: [txv]', 'parts: [blower]');
    expect(found.message).toMatch(/"blower" mends nothing.*"txv-stuck-closed" is mended by: txv;/);
    expect(found.fix?.to).toBe('txv');
    expect(more).toEqual([]);
    expect(partsOf('stone-chip', 'parts: [condenser, drier]', 'parts: [drier]')).toHaveLength(1);
  });

  it('a part that goes along with the one that mends is no slip, nor is one beside what is only cleaned', () => {
    // another error, so that no plan is played
    const [chip, leaves] = ['causes: [leak-condenser]', 'causes: [condenser-air-blocked], parts: []'];
    expect(partsOf('stone-chip', chip, 'causes: [leak]')).toEqual([]);
    expect(partsOf('leaves', leaves, 'causes: [leak], parts: [cabin-filter]')).toEqual([]);
  });

  it.each([
    ['electric', 'clutch-slipping', 'its compressor has no clutch', ['hatchback', 'sedan']],
    ['compact', 'bulb-loose', 'its metering device has no bulb on a tube of its own', ['hatchback']],
    ['pickup', 'txv-stuck-open', 'it has an orifice tube, not an expansion valve', ['compact', 'hatchback']],
  ])(
    'a fault that the %s cannot have, %s, with the reason and the cars that can',
    (vehicle, fault, why, cars) => {
      const other = hurry
        .replace('vehicle: hatchback', `vehicle: ${vehicle}`)
        .replace('air-in-loop, sev', `${fault}, sev`);
      const found = checkScenario('h.yaml', other, rubrics).find(({ code }) => code === 'SCN108');
      const [reason, can] = found?.message.split('; it can be in: ') ?? [];
      expect(reason).toContain(why);
      expect(can?.split(', ')).toEqual(expect.arrayContaining(cars));
      expect(can?.split(', ')).not.toContain(vehicle);
    },
  );

  it('names why for every fault that some car cannot have', () => {
    const picky = faults.filter(({ applies }) => vehicleIds.some((id) => !applies(vehicleOf(id))));
    expect(picky.length).toBeGreaterThan(8);
    expect(picky.filter(({ needs }) => needs === undefined).map(({ id }) => id)).toEqual([]);
  });

  it('but two leaks at two places are two', () => {
    const codes = hidden('leak, severity: 0.2, site: suction', 'leak, severity: 0.5').join(' ');
    expect(codes).not.toMatch(/SCN10\d/);
  });
});
