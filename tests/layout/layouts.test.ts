import { describe, expect, it } from 'vitest';
import { courseOf, crossings, stationAt, stretch } from '../../src/layout/course';
import { layoutFindings } from '../../src/layout/findings';
import type { Layout } from '../../src/layout/layout';
import { layoutIds, layoutOf } from '../../src/layout/layouts';
import { neighbour, stopsOf } from '../../src/layout/order';
import { lineFacts, placeOf } from '../../src/layout/place';
import { lineOf } from '../../src/layout/trace';
import { defaultRoute, hazardsOf, routesOf, wayThrough, zoneAt, zonesAlong } from '../../src/layout/zones';

const hatchback = layoutOf('hatchback');
const sedan = layoutOf('sedan');
const each = layoutIds.map((id) => [id, layoutOf(id)] as const);

describe('a course', () => {
  it('rounds a corner with the radius asked for', () => {
    const course = courseOf(
      [
        [0, 0],
        [100, 0],
        [100, 100],
      ],
      20,
    );
    expect(course.lengthMm).toBeCloseTo(160 + (Math.PI / 2) * 20, 1);
    const middle = stationAt(course, course.lengthMm / 2);
    expect(Math.hypot(middle.x - 80, middle.y - 20)).toBeCloseTo(20, 1);
  });

  it('shrinks a bend that a short run has no room for', () => {
    const course = courseOf(
      [
        [0, 0],
        [10, 0],
        [10, 300],
      ],
      200,
    );
    expect(Math.max(...course.points.map((p) => p[0]))).toBeLessThan(10.001);
  });

  it('is cut where it is asked to be cut', () => {
    const cut = stretch(
      courseOf(
        [
          [0, 0],
          [100, 0],
        ],
        5,
      ),
      20,
      30,
    );
    expect(cut).toEqual([
      [20, 0],
      [30, 0],
    ]);
  });

  it('finds where another crosses it', () => {
    expect(
      crossings(
        courseOf(
          [
            [0, 0],
            [100, 0],
          ],
          5,
        ),
        courseOf(
          [
            [40, -10],
            [40, 10],
          ],
          5,
        ),
      ),
    ).toEqual([40]);
  });
});

describe('layout files', () => {
  it.each(each)('%s holds together', (_, layout) => {
    expect(layoutFindings(layout)).toEqual([]);
  });

  it('no id or zone says which side a port belongs to', () => {
    for (const [, layout] of each) {
      expect(JSON.stringify([layout.ports.map((p) => p.id), layout.zones, layout.routes])).not.toMatch(
        /low|high|suction|discharge/,
      );
    }
  });

  it('a port off its line, a missing part and an unknown zone are each found', () => {
    const broken: Layout = {
      ...hatchback,
      parts: hatchback.parts.filter((part) => part.id !== 'drier'),
      ports: [{ ...hatchback.ports[0], at: [600, 300] }, hatchback.ports[1]],
      routes: [{ id: 'over-moon', port: 'port-a', through: ['moon'] }],
    };
    const found = layoutFindings(broken).join('\n');
    expect(found).toMatch(/port "port-a" is \d+ mm off line "liquid"/);
    expect(found).toMatch(/line "liquid" names part "drier"/);
    expect(found).toMatch(/route "over-moon" names zone "moon"/);
  });

  it('a port on rubber hose is found', () => {
    const moved = { ...hatchback, ports: [{ ...hatchback.ports[1], at: [500, 668] as const }] };
    expect(layoutFindings(moved)).toContain('port "port-b" sits on hose, not on tube');
  });
});

describe('zones and routes', () => {
  it('a straight hose from the gauge edge across the fan is seen to pass the fan', () => {
    const passed = zonesAlong(hatchback, [
      [-60, 600],
      [300, 700],
      [720, 700],
      [416, 430],
    ]);
    expect(passed).toContain('fan');
    expect(hazardsOf(hatchback, passed)).toContain('fan');
  });

  it.each(each)(
    'in the %s the usual route of every port is clear and reads back from its own way',
    (_, layout) => {
      for (const port of layout.ports) {
        expect(hazardsOf(layout, defaultRoute(layout, port.id))).toEqual([]);
        const along = zonesAlong(layout, wayThrough(layout, port.id, 'low', defaultRoute(layout, port.id)));
        expect(hazardsOf(layout, along)).toEqual([]);
      }
    },
  );

  it.each(each)('in the %s every port also has a way that somebody careless would take', (_, layout) => {
    for (const port of layout.ports) {
      const risky = routesOf(layout, port.id).flatMap((route) => hazardsOf(layout, route.through));
      const turning = layout.zones.flatMap(({ hazard }) =>
        hazard === 'belt' || hazard === 'fan' ? [hazard] : [],
      );
      expect(risky).toEqual(expect.arrayContaining(turning));
    }
  });

  it.each(each)('in the %s a route through the fan lays the hose in the fan', (_, layout) => {
    for (const port of layout.ports) {
      const route = routesOf(layout, port.id).find((r) => r.id === 'over-fans');
      expect(zonesAlong(layout, wayThrough(layout, port.id, 'low', route?.through ?? []))).toContain('fan');
    }
  });

  it('every port stands in the zone its routes start from', () => {
    for (const [, layout] of each) {
      for (const port of layout.ports) {
        for (const route of routesOf(layout, port.id))
          expect(zoneAt(layout, port.at)?.id).toBe(route.through[0]);
      }
    }
  });

  it('outside every zone there is none', () => {
    expect(zoneAt(sedan, [90_000, 0])).toBeNull();
  });
});

describe('words of place', () => {
  it('names thirds', () => {
    expect(placeOf(hatchback, [416, 430])).toEqual({ depth: 'middle', across: 'left' });
    expect(placeOf(sedan, [456, 668])).toEqual({ depth: 'front', across: 'left' });
    expect(placeOf(sedan, [1300, 150])).toEqual({ depth: 'rear', across: 'right' });
  });

  it('tells a line by its ends, bore, length and turns', () => {
    const facts = lineFacts(lineOf(hatchback, 'suction'));
    expect(facts).toMatchObject({
      from: 'txv',
      to: 'compressor',
      diameterMm: 16,
      turns: ['left', 'forward', 'right'],
    });
    expect(facts.lengthMm).toBeGreaterThan(650);
    expect(facts.lengthMm).toBeLessThan(800);
    expect(lineFacts(lineOf(sedan, 'liquid')).holds).toEqual(['orifice']);
  });

  it('has nothing to say of a heater hose', () => {
    expect(() => lineFacts(lineOf(sedan, 'heater-a'))).toThrow(/carries no refrigerant/);
  });
});

describe('order without a pointer', () => {
  it('goes round the loop with the flow first, then ports rear to front', () => {
    const ids = stopsOf(sedan).map((stop) => stop.id);
    expect(ids.slice(0, 9)).toEqual([
      'compressor',
      'discharge',
      'condenser',
      'liquid',
      'orifice',
      'evaporator',
      'evap-out',
      'accumulator',
      'suction',
    ]);
    expect(ids.slice(9, 11)).toEqual(['port-a', 'port-b']);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('an arrow goes to the nearest thing that way and nowhere at the edge', () => {
    const stops = stopsOf(hatchback);
    const port = stops.find((stop) => stop.id === 'port-b');
    expect(port && neighbour(stops, port, 'up')?.at[1]).toBeLessThan(488);
    const farthest = stops.reduce((a, b) => (b.at[0] > a.at[0] ? b : a));
    expect(neighbour(stops, farthest, 'right')).toBeNull();
  });

  it('every named part has a hit area', () => {
    for (const [, layout] of each)
      for (const part of layout.parts) if (part.name) expect(part.hit, part.id).toBeDefined();
  });
});
