/** Following a line from a port to the part that decides, in every bay that ships. */
import { describe, expect, it } from 'vitest';
import { fittingOf, fittings } from '../../src/equipment/fittings';
import { boreOf, letterOf } from '../../src/layout/bores';
import { layoutIds, layoutOf } from '../../src/layout/layouts';
import { tracePort } from '../../src/layout/trace';
import { vehicleOf } from '../../src/loop/car/vehicles';

const hatchback = layoutOf('hatchback');
const sedan = layoutOf('sedan');
const each = layoutIds.map((id) => [id, layoutOf(id)] as const);

describe('tracing a port to the part that decides', () => {
  it('tells the hatchback ports apart by the compressor and the expansion valve', () => {
    const thin = tracePort(hatchback, 'port-a');
    const thick = tracePort(hatchback, 'port-b');
    expect(thin.side).toBe('high');
    expect(thin.downstream.map((s) => s.id)).toEqual(['liquid', 'txv']);
    expect(thin.upstream.map((s) => s.id)).toEqual([
      'liquid',
      'drier',
      'drier-in',
      'condenser',
      'discharge',
      'compressor',
    ]);
    expect(thick.side).toBe('low');
    expect(thick.downstream.at(-1)).toEqual({ id: 'compressor', kind: 'part' });
    expect(thick.upstream.at(-1)).toEqual({ id: 'txv', kind: 'part' });
  });

  it('stops at the orifice tube inside the sedan liquid line', () => {
    const onAccumulator = tracePort(sedan, 'port-a');
    const onDischarge = tracePort(sedan, 'port-b');
    expect(onAccumulator.side).toBe('low');
    expect(onAccumulator.upstream.map((s) => s.id)).toEqual([
      'accumulator',
      'evap-out',
      'evaporator',
      'liquid',
      'orifice',
    ]);
    expect(onDischarge.side).toBe('high');
    expect(onDischarge.downstream.at(-1)).toEqual({ id: 'orifice', kind: 'part' });
    expect(onDischarge.upstream).toEqual([
      { id: 'discharge', kind: 'line' },
      { id: 'compressor', kind: 'part' },
    ]);
  });

  it.each(each)(
    'the fittings of the %s are those of what it was built for, on the sides that the lines lead to (sizes: SAE J639, from memory)',
    (id, layout) => {
      const { refrigerant } = vehicleOf(id).label;
      for (const port of layout.ports) {
        const { diameterM } = fittings[fittingOf(refrigerant, tracePort(layout, port.id).side)];
        expect(port.boreMm).toBe(boreOf(diameterM));
        expect(letterOf(port.boreMm)).toBe(tracePort(layout, port.id).side === 'low' ? 'L' : 'H');
      }
    },
  );

  it('stops at the compressor that a motor turns, and at both devices of the van on either side of the tee', () => {
    const electric = layoutOf('electric');
    expect(tracePort(electric, 'port-a').downstream.at(-1)).toEqual({ id: 'compressor', kind: 'part' });
    expect(tracePort(electric, 'port-b').downstream.map((s) => s.id)).toEqual([
      ...['discharge', 'condenser', 'drier-in', 'drier', 'liquid', 'txv'],
    ]);
    const van = layoutOf('van');
    const behindTee = tracePort(van, 'port-b');
    expect(behindTee.side).toBe('high');
    expect(behindTee.downstream.map((s) => s.id)).toEqual(['liquid', 'tee', 'liquid-front', 'orifice']);
    const rear = {
      ...van,
      ports: [{ ...van.ports[0], at: [1368, 220] as const, on: { line: 'rear-suction' } }],
    };
    expect(tracePort(rear, 'port-a').upstream.at(-1)).toEqual({ id: 'rear-evaporator', kind: 'part' });
    expect(tracePort(rear, 'port-a').side).toBe('low');
  });

  it('names in every layout each part and port that the vehicle names', () => {
    for (const id of layoutIds) {
      const { highSide, lowSide, rear, ports, condenserAir } = vehicleOf(id);
      const layout = layoutOf(id);
      const known = [...layout.parts, ...layout.lines].map((thing) => thing.id);
      const named = [highSide, lowSide, { parts: rear?.parts ?? [] }].flatMap(({ parts }) => parts);
      for (const { part } of [...named, ...condenserAir.fans]) expect(known, id).toContain(part);
      expect(ports.map((port) => port.id).sort()).toEqual(layout.ports.map((port) => port.id).sort());
    }
  });

  it('says which ports there are when asked for another', () => {
    expect(() => tracePort(sedan, 'port-z')).toThrow(/port-a, port-b/);
  });
});
