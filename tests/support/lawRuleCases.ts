/** Rows for the rules of the law, of training and of the weighed diagnosis: what breaks each, and what just does not. */
import { at, type Case, ev, low, ON, open } from './ruleCases';

const tank = ev('tank-open-to', 'high');
const recovery = ev('device-started', 'recovery-machine');
const gauge = (lowPa: number, highPa: number) => ({
  'lowSide.gaugePressurePa': lowPa,
  'highSide.gaugePressurePa': highPa,
});
const off = (id: string) => ({ [`law.${id}`]: 0 });

/** Broken where the law says no, kept where the same thing is done and it says yes. */
const byLaw = (id: string, event: typeof low): Case => ({
  broken: [at(0, off(id)), at(10, {}, event)],
  kept: [at(0), at(10, {}, event)],
});
const byGhosts = (measure: 'justified' | 'efficient' | 'noiseless'): Case => ({
  broken: [at(0)],
  brokenBy: { [`diagnosis.${measure}`]: 0.99 },
  kept: [at(0)],
  keptBy: { [`diagnosis.${measure}`]: 1 },
});

export const lawCases: Readonly<Record<string, Case>> = {
  // The same coupler on a loop that holds hardly anything is no work on refrigerant.
  lawService: {
    ...byLaw('mayService', open),
    others: [
      {
        broken: [at(0, { ...off('mayService'), ...gauge(-90_000, 20_100) }), at(10, {}, open)],
        kept: [at(0, { ...off('mayService'), ...gauge(-90_000, 20_000) }), at(10, {}, open)],
      },
    ],
  },
  lawCan: byLaw('mayBuyCan', low),
  lawCharge: byLaw('mayCharge', tank),
  lawRecover: byLaw('mayRecover', recovery),
  lawOldGas: byLaw('mayHandleR12', low),
  lawConvert: byLaw('mayConvert', low),
  lawOtherGas: byLaw('mayChangeGas', low),
  lawTopUp: {
    broken: [at(0, off('mayTopUp')), at(10, {}, low)],
    kept: [at(0, { ...off('mayTopUp'), 'loop.beenEmpty': ON }), at(10, { 'loop.massKg': 0.3 }, low)],
  },
  // Mended before the first gas.
  lawLeakFilled: {
    broken: [at(0, { ...off('mayTopUpLeaky'), 'loop.leaking': ON }), at(10, {}, low)],
    kept: [at(0, { ...off('mayTopUpLeaky'), 'loop.leaking': ON }), at(10, { 'loop.leaking': 0 }, low)],
  },
  beyondTraining: {
    broken: [at(0, {}, open), at(10, {}, ev('decided', 'refer'))],
    kept: [at(0, {}, ev('coupled')), at(10, {}, ev('decided', 'refer'))],
    others: [
      {
        broken: [at(0, gauge(0, 21_000)), at(10, {}, open)],
        kept: [at(0, gauge(-99_000, 20_000)), at(5, {}, open), at(10, {}, ev('decided', 'refer'))],
      },
    ],
  },
  saidRefer: {
    broken: [at(0, { 'decision.refer': ON }), at(10, { 'decision.refer': 0 }, ev('finished'))],
    kept: [at(0, { 'decision.refer': ON }), at(10, {}, ev('finished'))],
  },
  causeProven: byGhosts('justified'),
  causeCheaply: byGhosts('efficient'),
  causeNoNoise: byGhosts('noiseless'),
};
