/** What see-inside draws, out of a session's frame: of this car, and of a healthy one handled alike. */
import type { Cell, HealthyLoop, LoopBuild, LoopState } from '../../instruments/loop/loopState';
import type { StatePoint } from '../../instruments/phGeometry';
import type { SessionModel } from '../sessionModel';

export const POINT_NUMBERS = [1, 2, 3, 4] as const;

const pointsAt = (session: SessionModel, prefix: string): StatePoint[] =>
  POINT_NUMBERS.map((point) => ({
    pressurePa: session.signal(`${prefix}point${point}.pressurePa`),
    enthalpyJPerKg: session.signal(`${prefix}point${point}.enthalpyJPerKg`),
    temperatureK: session.signal(`${prefix}point${point}.temperatureK`),
  }));

export const pointsOf = (session: SessionModel): StatePoint[] => pointsAt(session, '');
/** NaN where it is not told: an assessed session, a loop that has been opened or emptied. */
export const healthyPointsOf = (session: SessionModel): StatePoint[] => pointsAt(session, 'expected.');

export function buildOf(session: SessionModel): LoopBuild {
  const has = (id: string): boolean => session.layout.parts.some((part) => part.id === id);
  const drier = session.layout.parts.find(({ id }) => id === 'drier');
  return {
    metering: session.layout.parts.some(({ kind }) => kind === 'orifice') ? 'orifice' : 'valve',
    pot: has('accumulator') ? 'accumulator' : drier?.kind === 'drier-slim' ? 'onCondenser' : 'receiver',
    hasRear: has('rear-evaporator'),
  };
}

/** Values of the cells of a coil as long as there are any. */
function alongCells(read: (cell: string) => number): number[] {
  const values: number[] = [];
  for (let i = 1; !Number.isNaN(read(`cell${i}`)); i++) values.push(read(`cell${i}`));
  return values;
}

function cellsOf(session: SessionModel, part: string): Cell[] {
  const liquid = alongCells((cell) => session.signal(`vessel.${part}.${cell}.liquidRatio`));
  return liquid.map((liquidRatio, i) => ({
    liquidRatio,
    temperatureK: session.signal(`vessel.${part}.cell${i + 1}.temperatureK`),
  }));
}

const wholeOf = (session: SessionModel, part: string): Cell => ({
  liquidRatio: session.signal(`vessel.${part}.liquidRatio`),
  temperatureK: session.signal(`vessel.${part}.temperatureK`),
});

/** A flow that is not there is none. */
const flow = (session: SessionModel, id: string): number => session.signal(id) || 0;

export function loopStateOf(session: SessionModel): LoopState {
  const build = buildOf(session);
  return {
    build,
    points: pointsOf(session),
    condenser: cellsOf(session, 'condenser'),
    evaporator: cellsOf(session, 'evaporator'),
    rear: build.hasRear ? cellsOf(session, 'rear-evaporator') : [],
    discharge: wholeOf(session, 'discharge'),
    pot: wholeOf(session, build.pot === 'accumulator' ? 'accumulator' : 'drier'),
    liquid: wholeOf(session, 'liquid'),
    suction: wholeOf(session, 'suction'),
    pumpedKgPerS: flow(session, 'compressor.massFlowKgPerS'),
    meteredKgPerS: flow(session, 'metering.massFlowKgPerS'),
    rearKgPerS: flow(session, 'rearMetering.massFlowKgPerS'),
  };
}

export function healthyLoopOf(session: SessionModel): HealthyLoop {
  const pot = buildOf(session).pot === 'accumulator' ? 'accumulator' : 'drier';
  const along = (part: string): number[] =>
    alongCells((cell) => session.signal(`expected.vessel.${part}.${cell}.liquidRatio`));
  return {
    pot: session.signal(`expected.vessel.${pot}.liquidRatio`),
    condenser: along('condenser'),
    evaporator: along('evaporator'),
  };
}
