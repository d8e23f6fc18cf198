/**
 * Where the large parts stand in a drill bay, and where their fittings are. The sizes are those of the drawings; the
 * places vary with the seed.
 */
import type { Part, PointMm } from '../layout';
import { CONDENSER } from './bayFrame';
import type { Draws } from './draws';
import type { EngineLie, Metering } from './drill';

export interface Sites {
  readonly lie: EngineLie;
  readonly metering: Metering;
  readonly parts: readonly Part[];
  readonly compressor: { readonly suction: PointMm; readonly discharge: PointMm };
  /** At the firewall: the valve's seats, or the flanges of the evaporator's case. */
  readonly firewall: { readonly into: PointMm; readonly out: PointMm };
  /** Where a pipe of the engine may leave it, by channel, and between which heights. */
  readonly engine: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  /** A gap in front of the engine for the radiator's hose. */
  readonly radiatorHoseX: number;
}

export function sitesOf(draws: Draws, metering: Metering): Sites {
  const lie = draws.pick<EngineLie>(['across', 'across', 'along-left', 'along-right']);
  const engine = lie === 'across' ? across(draws) : along(draws, lie);
  const wall = metering === 'valve' ? valve(draws) : evaporatorCase(draws, engine.engine.left);
  return {
    lie,
    metering,
    ...engine,
    firewall: wall.firewall,
    parts: [...engine.parts, ...wall.parts, ...front(lie === 'across' ? 734 : 748)],
  };
}

type EngineSite = Pick<Sites, 'parts' | 'compressor' | 'engine' | 'radiatorHoseX'>;

function across(draws: Draws): EngineSite {
  const x = draws.whole(570, 610);
  const c = x - 124;
  const y = 566;
  return {
    parts: [
      { id: 'engine', kind: 'engine-across', name: 'engine', at: [x, 270], z: 3, size: { w: 470 } },
      {
        id: 'compressor',
        kind: 'compressor-side',
        name: 'compressor',
        at: [c, y],
        z: 4,
        hit: [c - 24, y - 66, 276, 142],
      },
      {
        id: 'belt',
        kind: 'belt-side',
        at: [c, 0],
        z: 3.6,
        wheels: [
          [262, 60],
          [352, 52],
          [442, 100],
        ],
      },
      { id: 'seat', kind: 'block', at: [c + 146, y + 38], z: 12, size: { w: 96, h: 34 } },
      fan(x + 180, 682, 430),
    ],
    compressor: { suction: [c + 118, y + 46], discharge: [c + 170, y + 46] },
    engine: { left: x - 40, right: x + 500, top: 300, bottom: 450 },
    radiatorHoseX: draws.pick([x + 130, x + 300, x + 440]),
  };
}

function along(draws: Draws, lie: EngineLie): EngineSite {
  const left = lie === 'along-left';
  const x = left ? draws.whole(800, 890) : draws.whole(700, 760);
  const c = left ? x - 310 : x + 340;
  const out = left ? -1 : 1;
  const wheels = [
    [-310, 100, 66],
    [0, 170, 64],
    [232, 150, 46],
    [0, -50, 76],
  ];
  return {
    parts: [
      { id: 'engine', kind: 'engine-along', name: 'engine', at: [x, 176], z: 3 },
      { id: 'alternator', kind: 'alternator', at: [x - out * 232, 612], z: 3 },
      {
        id: 'compressor',
        kind: 'compressor-front',
        name: 'compressor',
        at: [c, 656],
        z: 4,
        hit: [c - 74, 430, 148, 190],
      },
      {
        id: 'belt',
        kind: 'belt-front',
        at: [x, 684],
        z: 5,
        wheels: left ? wheels : [wheels[3], [-232, 150, 46], wheels[1], [340, 100, 66]],
      },
      { id: 'clutch', kind: 'clutch-front', at: [c, 649], z: 5.6 },
      { id: 'seat-a', kind: 'block', at: [c + out * 24, 470], z: 12, size: { w: 58, h: 34 } },
      {
        id: 'seat-b',
        kind: 'block',
        drawing: 'tall',
        at: [c + out * 50, 560],
        z: 12,
        size: { w: 34, h: 54 },
      },
      fan(x - 10, 676, 440),
    ],
    compressor: { suction: [c + out * 46, 560], discharge: [c + out * 30, 470] },
    engine: { left: x - 150, right: x + 206, top: 220, bottom: 400 },
    radiatorHoseX: x + draws.pick(left ? [150, 230, -60] : [-150, 60, -60]),
  };
}

const fan = (x: number, y: number, w: number): Part => ({
  id: 'fan',
  kind: 'fan-electric',
  name: 'radiator-fan',
  at: [x, y],
  z: 6,
  size: { w, h: 96 },
  hit: [x - w / 2, y, w, 90],
});

interface WallSite {
  readonly parts: readonly Part[];
  readonly firewall: Sites['firewall'];
}

function valve(draws: Draws): WallSite {
  const x = draws.whole(460, 960);
  return {
    parts: [
      { id: 'valve', kind: 'txv', name: 'txv', at: [x, 126], z: 9, hit: [x - 70, 118, 140, 84] },
      {
        id: 'cabin',
        kind: 'filter-lid',
        at: [x > 750 ? x - 260 : x + 130, 112],
        z: 9,
        size: { w: 112, h: 38 },
      },
    ],
    firewall: { into: [x - 32, 184], out: [x + 32, 184] },
  };
}

const CASE_WIDTH_MM = 300;

function evaporatorCase(draws: Draws, engineLeft: number): WallSite {
  const x = draws.whole(Math.min(150, engineLeft - 480), Math.max(190, engineLeft - 350));
  const [a, b] = draws.chance(0.5) ? [x + 46, x + 150] : [x + 150, x + 46];
  return {
    parts: [
      {
        id: 'evaporator',
        kind: 'evaporator-case',
        drawing: 'right',
        name: 'evaporator',
        at: [x, 112],
        z: 4,
        size: { w: CASE_WIDTH_MM, h: 106 },
        hit: [x, 112, CASE_WIDTH_MM, 136],
      },
      { id: 'flange-a', kind: 'flange', at: [a, 244], z: 8.5, size: { w: 34, h: 24 } },
      { id: 'flange-b', kind: 'flange', at: [b, 244], z: 8.5, size: { w: 52, h: 26 } },
    ],
    firewall: { into: [a, 240], out: [b, 240] },
  };
}

function front(radiatorY: number): Part[] {
  const [x, y, w, h] = CONDENSER;
  return [
    {
      id: 'radiator',
      kind: 'radiator',
      name: 'radiator',
      at: [440, radiatorY],
      z: 7,
      size: { w: 800, h: 38 },
      hit: [440, radiatorY, 800, 38],
    },
    {
      id: 'condenser',
      kind: 'condenser',
      name: 'condenser',
      at: [x, y],
      z: 1,
      size: { w, h },
      hit: [x, y - 6, w, h + 8],
    },
  ];
}
