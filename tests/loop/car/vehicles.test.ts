import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readYaml, YamlError } from '../../../shared/schema/readYaml';
import { checkVehicle } from '../../../shared/schema/vehicle';
import { layoutOf } from '../../../src/layout/layouts';
import { vehicleIds, vehicleOf } from '../../../src/loop/car/vehicles';
import { CARS, steady } from '../steady';

const FILE = 'shared/vehicles/sedan.yaml';
const TEXT = readFileSync(new URL('../../../shared/vehicles/sedan.yaml', import.meta.url), 'utf8');

describe('vehicle files', () => {
  it('are a car of each kind', () => {
    expect(vehicleIds).toEqual(['compact', 'electric', 'hatchback', 'pickup', 'sedan', 'van']);
    expect(vehicleOf('hatchback').metering.kind).toBe('expansion-valve');
    expect(vehicleOf('sedan').metering.kind).toBe('orifice-tube');
    expect(() => vehicleOf('tractor')).toThrow('there is compact, electric, hatchback');
  });

  it('put their ports on the parts where the bay has them', () => {
    for (const id of vehicleIds) {
      const drawn = layoutOf(id).ports;
      const ports = vehicleOf(id).ports;
      expect(ports.map((port) => port.id).sort()).toEqual(drawn.map((port) => port.id).sort());
      for (const { id: portId, on } of drawn) {
        const place = 'line' in on ? on.line : on.part;
        expect(ports.find((port) => port.id === portId)?.part).toBe(place);
      }
    }
  });

  it('refuse a bare number, a wrong unit and an unknown key, with their place', () => {
    const complaint = (from: string, to: string): string => {
      try {
        checkVehicle(readYaml(FILE, TEXT.replace(from, to)));
      } catch (error) {
        if (error instanceof YamlError) return error.message;
        throw error;
      }
      return '';
    };
    expect(complaint('charge: 720 g', 'charge: 720')).toMatch(/^shared\/vehicles\/sedan\.yaml:\d+:\d+ /);
    expect(complaint('charge: 720 g', 'charge: 720 mL')).toContain('mass');
    expect(complaint('pulleyRatio', 'pullyRatio')).toContain('sedan.yaml');
    expect(complaint('charge: 720 g', 'charge: 715 g')).toBe('');
  });
});

describe('service information', () => {
  for (const id of vehicleIds) {
    const { lines } = vehicleOf(id).service;
    // two weathers of the newer cars, to save time
    for (const line of [...CARS].some((known) => known === id) ? lines : [lines[1], lines[4]]) {
      it(`${id} at ${Math.round(line.ambient - 273.15)} °C: the windows are the healthy car's readings with 15 % either way`, () => {
        const { service } = vehicleOf(id);
        const { highSideGaugePa, lowSideGaugePa, ventK } = steady(id, {
          ambientC: line.ambient - 273.15,
          relativeHumidity: service.humidity,
          rpm: service.engine * 60 || 1500,
          minutes: service.minutes / 60,
          averageS: 120,
        });
        expect(Math.abs(line.lowFrom - 0.85 * lowSideGaugePa.min)).toBeLessThan(12_000);
        expect(Math.abs(line.lowTo - 1.15 * lowSideGaugePa.max)).toBeLessThan(12_000);
        expect(Math.abs(line.highFrom - 0.85 * highSideGaugePa.min)).toBeLessThan(12_000);
        expect(Math.abs(line.highTo - 1.15 * highSideGaugePa.max)).toBeLessThan(12_000);
        expect(ventK).toBeGreaterThan(line.ventFrom);
        expect(ventK).toBeLessThan(line.ventTo);
      });
    }
  }
});
