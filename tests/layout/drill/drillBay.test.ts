import { expect, test } from 'vitest';
import { courseOf, nearestStation } from '../../../src/layout/course';
import { answerOf, isOnLoop } from '../../../src/layout/drill/answerOf';
import { drillBay } from '../../../src/layout/drill/drillBay';
import { drillTrace } from '../../../src/layout/drill/drillTrace';
import { joins } from '../../../src/layout/drill/joins';
import { layoutFindings } from '../../../src/layout/findings';
import { loopLines, tracePort } from '../../../src/layout/trace';
import { bayOfTurn, drillFigures } from './drillFigures';

const MANY = 240;
const bays = Array.from({ length: MANY }, (_, i) => bayOfTurn(i + 1));

test('a bay is the same each time it is asked for, and another seed or level gives another', () => {
  expect(drillBay(17, 3)).toEqual(drillBay(17, 3));
  expect(drillBay(17, 3).layout).not.toEqual(drillBay(18, 3).layout);
  expect(drillBay(17, 3).layout.lines).not.toEqual(drillBay(17, 2).layout.lines);
});

test('every bay holds together as a layout does', () => {
  for (const { layout, ports } of bays) {
    const own = ports.filter(({ side }) => side !== null).map(({ id }) => id);
    const findings = layoutFindings({ ...layout, ports: layout.ports.filter(({ id }) => own.includes(id)) });
    expect(findings, layout.id).toEqual([]);
  }
});

test('the loop goes round: from the compressor every line and joint is met once and the compressor again', () => {
  for (const { layout } of bays) {
    const lines = loopLines(layout);
    let at = 'compressor';
    let met = 0;
    do {
      const next = lines.filter(({ from }) => from === at);
      expect(next, `${layout.id}: on from ${at}`).toHaveLength(1);
      at = next[0].to as string;
      met++;
    } while (at !== 'compressor' && met <= lines.length);
    expect(met, layout.id).toBe(lines.length);
  }
});

test('lines end where the next begins, so that the way can be followed by eye', () => {
  for (const { layout } of bays) {
    const lines = loopLines(layout);
    for (const line of lines) {
      const next = lines.find(({ from }) => from === line.to);
      const part = layout.parts.find(({ id }) => id === line.to);
      const end = line.way[line.way.length - 1];
      const isJoint = part?.id.startsWith(`${line.id.slice(0, line.id.lastIndexOf('-'))}-`);
      if (isJoint) expect(next?.way[0], `${layout.id} ${line.id}`).toEqual(end);
    }
  }
});

test('exactly one port is on the low side and one on the high, and the trace says so, not the file', () => {
  for (const bay of bays) {
    const traced = bay.ports.map(({ id }) => (isOnLoop(bay, id) ? tracePort(bay.layout, id).side : null));
    expect(traced).toEqual(bay.ports.map(({ side }) => side));
    expect(traced.filter((side) => side === 'low')).toHaveLength(1);
    expect(traced.filter((side) => side === 'high')).toHaveLength(1);
  }
});

test('a trace leads from thing to thing that it joins, and ends at what decides', () => {
  for (const bay of bays) {
    const { port } = answerOf(bay);
    const { downstream, upstream, side } = drillTrace(bay, port);
    for (const way of [downstream, upstream]) {
      expect(joins(bay, port)).toContain(way[0].id);
      for (let i = 1; i < way.length; i++) expect(joins(bay, way[i - 1].id)).toContain(way[i].id);
    }
    const end = downstream[downstream.length - 1];
    const start = upstream[upstream.length - 1];
    const ends = [end, start].map((step) => (step.kind === 'part' ? step.part : ''));
    const metering = bay.metering === 'valve' ? 'valve' : 'orifice';
    expect(ends).toEqual(side === 'low' ? ['compressor', metering] : [metering, 'compressor']);
  }
});

test("the loop's own diameters stay true: suction is the thickest, then discharge, then liquid", () => {
  for (const { layout } of bays) {
    const of = (run: string): number[] =>
      loopLines(layout)
        .filter(({ id }) => id.startsWith(run))
        .map(({ diameterMm }) => diameterMm);
    expect(Math.min(...of('suction'), ...of('evap-out'))).toBeGreaterThan(Math.max(...of('discharge')));
    expect(Math.min(...of('discharge'))).toBeGreaterThan(Math.max(...of('liquid'), ...of('drier-in')));
  }
});

test('other pipes carry no refrigerant, are of other stuff, and lie on no port', () => {
  for (const { layout, decoys, ports } of bays) {
    expect(decoys.length).toBeGreaterThan(0);
    for (const { line: id } of decoys) {
      const line = layout.lines.find((one) => one.id === id);
      if (!line) throw new RangeError(id);
      expect([line.from, line.to]).toEqual([undefined, undefined]);
      expect(line.sections?.every(([made]) => made === 'rubber' || made === 'iron')).toBe(true);
      for (const { id: port, side } of ports) {
        if (side === null) continue;
        const at = layout.ports.find((one) => one.id === port)?.at ?? [0, 0];
        const { awayMm } = nearestStation(courseOf(line.way, line.fillet), at);
        expect(awayMm, `${layout.id}: ${port} and ${id}`).toBeGreaterThan(line.diameterMm / 2 + 13);
      }
    }
  }
});

test('what misleads comes with the levels: letters from the third, panels too, foreign fittings at the last', () => {
  for (const { level, ports, covers } of bays) {
    const caps = new Set(ports.map(({ cap }) => cap));
    if (level <= 2) expect([...caps]).toEqual(['blank']);
    if (level <= 2) expect(covers).toEqual([]);
    if (level < 4) expect(ports).toHaveLength(2);
  }
  const last = bays.filter(({ level }) => level === 4);
  const third = bays.filter(({ level }) => level === 3);
  expect(third.some(({ covers }) => covers.length > 0)).toBe(true);
  expect(third.some(({ ports }) => ports.some(({ cap }) => cap === 'swapped'))).toBe(true);
  expect(last.some(({ ports }) => ports.some(({ side }) => side === null))).toBe(true);
  expect(last.some(({ ports }) => ports.some(({ cap }) => cap === 'missing'))).toBe(true);
});

test('500 bays: guesses by nearest part, thickest pipe, cap or its size are right at most 60 times in 100', () => {
  const figures = drillFigures(500);
  expect(figures.nearestPartRight).toBeLessThanOrEqual(0.6);
  expect(figures.thickestPipeRight).toBeLessThanOrEqual(0.6);
  expect(figures.capRight).toBeLessThanOrEqual(0.6);
  expect(figures.capSizeRight).toBeLessThanOrEqual(0.6);
  expect(figures.bestByNearestPart).toBeLessThanOrEqual(0.6);
  expect(figures.bestByThickestPipe).toBeLessThanOrEqual(0.6);
  expect(figures.bestByCapSize).toBeLessThanOrEqual(0.6);
  expect(figures.nearestToThickest).toBeLessThanOrEqual(0.6);
  expect(figures.traces).toBeGreaterThan(180);
});
