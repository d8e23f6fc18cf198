/** Shows the bay by itself while somebody draws it: `?vehicle=sedan&theme=dark&state=work`. */

import type { BayTheme } from '../../../src/bay/bayApi';
import { type BayFrame, hasCoupler, stillFrame } from '../../../src/bay/bayFrame';
import { createBay } from '../../../src/bay/bayView';

import { couplerId, hoseOfCoupler } from '../../../src/bay/itemIds';
import type { HoseId } from '../../../src/layout/layout';
import '../../../src/layout/allLayouts';
import { layoutOf } from '../../../src/layout/layouts';
import { tracePort } from '../../../src/layout/trace';
import { defaultRoute } from '../../../src/layout/zones';
import { learnWords } from '../../../src/words/words';

await Promise.all([learnWords('page'), learnWords('job')]);

const query = new URLSearchParams(location.search);
const layout = layoutOf(query.get('vehicle') ?? 'hatchback');
const host = document.getElementById('host') as HTMLElement;
const lowPort = layout.ports.find((port) => tracePort(layout, port.id).side === 'low')?.id ?? '';
const highPort = layout.ports.find((port) => port.id !== lowPort)?.id ?? '';
const label = ['A/C', 'R-134a 0.48 kg'] as const;

let frame: BayFrame = { ...stillFrame(layout.ports.map((port) => port.id)), label };

const states: Record<string, Partial<BayFrame>> = {
  rest: {},
  charge: {
    hoses: [
      { id: 'charging', port: lowPort, open: true, route: defaultRoute(layout, lowPort), caught: false },
    ],
    can: {
      id: 'can-1',
      tiltDeg: 0,
      valveSixteenths: 6,
      print: 'R-134a',
      mounted: true,
      frostLevel: 0.4,
      onScale: true,
      readout: '182 g',
    },
    ports: { [lowPort]: { cap: 'missing', strap: true }, [highPort]: { cap: 'blank', strap: true } },
  },
  mat: {
    hoses: [
      { id: 'low', port: null, open: false, route: [], caught: false },
      { id: 'high', port: null, open: false, route: [], caught: false },
      { id: 'charging', port: null, open: false, route: [], caught: false },
      { id: 'utility', port: null, open: false, route: [], caught: false },
    ],
    can: {
      id: 'can-1',
      tiltDeg: 0,
      valveSixteenths: 0,
      print: 'R-134a',
      mounted: false,
      frostLevel: null,
      onScale: true,
      readout: '340 g',
    },
    ports: { [lowPort]: { cap: 'missing', strap: false }, [highPort]: { cap: 'missing', strap: true } },
  },
  work: {
    hoses: [
      { id: 'low', port: lowPort, open: true, route: defaultRoute(layout, lowPort), caught: false },
      { id: 'high', port: highPort, open: false, route: defaultRoute(layout, highPort), caught: false },
      { id: 'utility', port: null, open: false, route: [], caught: false },
    ],
    can: {
      id: 'can-1',
      tiltDeg: Number(query.get('tilt') ?? 0),
      valveSixteenths: 6,
      print: 'R-134a',
      mounted: true,
      frostLevel: 0.4,
      onScale: true,
      readout: '182 g',
    },
    ports: { [lowPort]: { cap: 'missing', strap: false }, [highPort]: { cap: 'missing', strap: true } },
    engineRpm: 1500,
    clutchEngaged: true,
    fansTurning: { fan: true, fan2: true },
    sweat: { suction: 0.8, accumulator: 0.9, 'evap-out': 1 },
    glass: { bubbles: 0.6, streaked: false },
  },
  frost: {
    frost: { suction: 0.7, accumulator: 1, 'evap-out': 1, liquid: 1 },
    condenserDirt: 1,
    engineRpm: 1500,
    clutchEngaged: true,
  },
  caps: { ports: { [lowPort]: { cap: 'swapped', strap: true }, [highPort]: { cap: 'letter', strap: true } } },
  covered: {
    ports: {
      [lowPort]: { cap: 'blank', strap: true, covered: true },
      [highPort]: { cap: 'missing', strap: true },
    },
  },
  marked: { marked: ['suction', 'compressor'], keepClearShown: true },
};
const state = states[query.get('state') ?? 'rest'] ?? {};
frame = { ...frame, ...state };

const setHose = (id: HoseId, port: string | null, route: readonly string[]): void => {
  frame = {
    ...frame,
    hoses: frame.hoses.map((hose) => (hose.id === id ? { ...hose, port, route, open: false } : hose)),
  };
  bay.update(frame);
};
const bay = await createBay(host, layout, (query.get('theme') ?? 'light') as BayTheme, {
  onPick: (id) => {
    console.log('pick', id);
    const hose = frame.hoses.filter(hasCoupler).find((h) => couplerId(h.id) === id);
    if (hose) frame = { ...frame, hoses: frame.hoses.map((h) => (h === hose ? { ...h, open: !h.open } : h)) };
    if (id.startsWith('cap:')) {
      const port = id.slice(4);
      frame = {
        ...frame,
        ports: {
          ...frame.ports,
          [port]: { strap: false, cap: frame.ports[port].cap === 'missing' ? 'blank' : 'missing' },
        },
      };
    }
    bay.update(frame);
  },
  onDrop: (item, target, route) => {
    console.log('drop', item, target, route.join(','));
    const hose = hoseOfCoupler(item);
    if (hose && target === 'mat') setHose(hose, null, []);
    if (hose && (hose === 'high' ? highPort : lowPort) === target) setHose(hose, target, route);
    return true;
  },
  onCoupler: (hose) => console.log('coupler', hose),
  onTilt: (tiltDeg) => {
    if (!frame.can) return;
    frame = { ...frame, can: { ...frame.can, tiltDeg } };
    bay.update(frame);
  },
  onShake: () => console.log('shaken'),
  onValve: (valveSixteenths) => {
    if (!frame.can) return;
    frame = { ...frame, can: { ...frame.can, valveSixteenths } };
    bay.update(frame);
  },
  onLook: (id) => {
    console.log('look', id);
    document.getElementById('close')?.remove();
    const picture = bay.closeUp(id, 400, 340);
    if (!picture) return;
    picture.id = 'close';
    picture.style.cssText =
      'position:absolute;right:20px;top:80px;width:400px;height:340px;border:2px solid #111';
    document.body.append(picture);
  },
  validTargets: (item) => {
    const hose = hoseOfCoupler(item);
    if (hose === 'low' || hose === 'charging') return [lowPort, 'mat'];
    if (hose === 'high') return [highPort, 'mat'];
    return ['mat', 'scale'];
  },
});
bay.update(frame);
if (query.has('zoom')) for (let i = 0; i < Number(query.get('zoom')); i++) bay.zoom('nearer');
if (query.has('whole')) bay.zoom('whole');
Object.assign(window, { bay });
// Time of a repaint and of a frame, read by whoever measures.
const took: number[] = [];
Object.assign(window, {
  measure(): string {
    const start = performance.now();
    for (let i = 0; i < 50; i++) bay.update({ ...frame, engineRpm: 1500 + i });
    return `update ${((performance.now() - start) / 50).toFixed(2)} ms ${took.length}`;
  },
});
document.body.dataset.ready = 'true';
