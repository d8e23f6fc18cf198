/** Where the pipes of the cutaway run, by how a loop is built. Corners in the order of flow; view box 680 x 440. */
import type { LoopBuild } from './loopState';

export type Way = readonly (readonly [x: number, y: number])[];

export interface LoopWays {
  /** Out of the evaporator to the pot before the compressor, or to the compressor itself. */
  readonly wet: Way;
  readonly suction: Way | null;
  readonly discharge: Way;
  /** Out of the condenser to the metering devices, in pieces that join. */
  readonly liquid: readonly Way[];
  readonly metered: Way;
  readonly rearIn: Way | null;
  readonly rearOut: Way | null;
  /** Where the metering device sits, between the two sides. */
  readonly meterY: number;
  readonly rearMeterY: number;
  /** First pass of the evaporator, and the step to the next. */
  readonly coilY: number;
  readonly coilStep: number;
}

const METER_Y = 384;
const REAR_METER_Y = 408;
const VAN_METER_Y = 336;

export function waysOf({ pot, hasRear }: LoopBuild): LoopWays {
  const coilY = hasRear ? 258 : 300;
  const coilStep = hasRear ? -24 : -30;
  const meterY = hasRear ? VAN_METER_Y : METER_Y;
  const [inY, outY] = [coilY + 10, coilY + 3 * coilStep + 10];
  const down: Way = [
    [612, 296],
    [640, 296],
    [640, hasRear ? 370 : meterY],
  ];
  const end: Way = [
    [640, meterY],
    [368, meterY],
  ];
  const tee: readonly Way[] = [
    [...down, [404, 370]],
    [
      [404, 370],
      [404, meterY],
      [368, meterY],
    ],
    [
      [404, 370],
      [404, REAR_METER_Y],
      [368, REAR_METER_Y],
    ],
  ];
  return {
    wet:
      pot === 'accumulator'
        ? [
            [216, outY],
            [230, outY],
            [230, 170],
          ]
        : [
            [216, outY],
            [240, outY],
            [240, 74],
            [302, 74],
          ],
    suction:
      pot === 'accumulator'
        ? [
            [206, 96],
            [206, 74],
            [302, 74],
          ]
        : null,
    discharge: [
      [378, 74],
      [640, 74],
      [640, 206],
      [612, 206],
    ],
    liquid: hasRear ? tee : [[...down, ...end.slice(1)]],
    metered: [
      [312, meterY],
      [240, meterY],
      [240, inY],
      [216, inY],
    ],
    rearIn: hasRear
      ? [
          [312, REAR_METER_Y],
          [30, REAR_METER_Y],
          [30, 386],
          [64, 386],
        ]
      : null,
    rearOut: hasRear
      ? [
          [64, 360],
          [30, 360],
          [30, 120],
          [170, 120],
        ]
      : null,
    meterY,
    rearMeterY: REAR_METER_Y,
    coilY,
    coilStep,
  };
}

export const asPath = (way: Way): string => `M${way.map(([x, y]) => `${x} ${y}`).join('L')}`;
