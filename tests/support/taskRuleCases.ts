/** Rows for the rules of findings, conversion and hand-over: what breaks each, and what just does not. */
import type { MeasureId } from '../../src/session/record/measures';
import { at, type Case, ev, low, ON, running } from './ruleCases';

const summed = ev('summed', 'charge');
const labelled = (refrigerant: string) => ev('conversion-labelled', refrigerant);
const label = (forbidden: number) => ({
  'conversion.labelled': ON,
  'conversion.labelForbidden': forbidden,
});
const held = { ...running, 'probe.air.centre-vent': ON };

/** An outcome, just over its full marks and just at them. */
const byMeasure = (id: MeasureId, broken: number, kept: number, event: ReturnType<typeof ev>): Case => ({
  broken: [at(0), at(10, {}, event)],
  brokenBy: { [id]: broken },
  kept: [at(0), at(10, {}, event)],
  keptBy: { [id]: kept },
});

/** A step that has to be done before refrigerant goes in: done a moment after it, and in the same moment. */
const beforeGas = (signal: string): Case => ({
  broken: [at(0), at(10, {}, low), at(11, { [signal]: ON })],
  kept: [at(0), at(10, { [signal]: ON }, low)],
});

export const taskCases: Readonly<Record<string, Case>> = {
  chocked: {
    broken: [at(0), at(10, { 'engine.rpm': 800 }, ev('engine-started')), at(11, { 'chock.on': ON })],
    kept: [at(0), at(10, { 'chock.on': ON }), at(20, { 'engine.rpm': 800 }, ev('engine-started'))],
  },
  historyAsked: {
    broken: [at(0, { 'owner.converted.asked': ON }), at(10, {}, ev('coupled', 'charging'))],
    kept: [
      at(0, { 'owner.converted.asked': ON, 'owner.opened.asked': ON }),
      at(10, {}, ev('coupled', 'charging')),
    ],
  },
  loopKindRight: byMeasure('findings.loopWrongCount', 1, 0, ev('loop-noted')),
  gasRight: byMeasure('findings.gasWrongCount', 1, 0, ev('gas-noted')),
  gasSaidFirst: {
    broken: [at(0), at(10, {}, low), at(20, {}, ev('gas-noted'))],
    kept: [at(0), at(5, {}, ev('gas-noted')), at(10, {}, low)],
  },
  clutchRight: byMeasure('findings.clutchWrongCount', 1, 0, ev('clutch-noted')),
  staticFirst: {
    broken: [at(0, { 'engine.rpm': 800 }, ev('engine-started')), at(10, {}, ev('noted', 'low-gauge'))],
    kept: [at(0, {}, ev('noted', 'low-gauge')), at(10, { 'engine.rpm': 800 }, ev('engine-started'))],
  },
  coldestAsked: {
    broken: [at(0, held), at(10, {}, ev('noted', 'air'))],
    kept: [at(0, held), at(10, { 'temperature.coldest': ON }, ev('noted', 'air'))],
  },
  chargeSummed: {
    broken: [at(0), at(10, {}, low), at(20, {}, summed)],
    kept: [at(0, {}, summed), at(10, {}, low)],
  },
  sumsRight: byMeasure('sums.wrongCount', 1, 0, summed),
  oldWritten: {
    broken: [at(0), at(10, {}, labelled('R-134a')), at(20, {}, ev('old-noted'))],
    kept: [at(0, {}, ev('old-noted')), at(10, {}, labelled('R-134a'))],
  },
  oldWrittenRight: byMeasure('conversion.oldWrongCount', 1, 0, ev('old-noted')),
  oldGasOut: byMeasure('conversion.oldKg', 0.021, 0.02, low),
  fittingsFirst: beforeGas('conversion.fittings'),
  oldPortsGone: byMeasure('conversion.oldPortsCount', 1, 0, low),
  drierRenewed: beforeGas('conversion.drier'),
  sealsRenewed: beforeGas('conversion.seals'),
  cutOutFitted: {
    broken: [at(0, { 'conversion.fittings': ON }), at(10, {}, ev('engine-started'))],
    kept: [at(0, { 'conversion.fittings': ON, 'conversion.cutOut': ON }), at(10, {}, ev('engine-started'))],
    others: [
      {
        broken: [at(0, { 'conversion.fittings': ON }, ev('engine-started'))],
        // as the owner brought it, before anything was converted
        kept: [
          at(0, {}, ev('engine-started')),
          at(10, { 'conversion.fittings': ON, 'conversion.cutOut': ON }),
          at(20, {}, ev('engine-started')),
        ],
      },
    ],
  },
  convertedToOwn: {
    // A slip of the pen that was written anew before the car left is none.
    broken: [at(0, label(ON)), at(10, {}, ev('finished'))],
    kept: [at(0, label(ON)), at(5, label(0)), at(10, {}, ev('finished'))],
  },
  newLabelled: { broken: [at(0)], kept: [at(0, { 'conversion.labelled': ON })] },
  newLabelRight: byMeasure('conversion.labelWrongCount', 1, 0, labelled('R-134a')),
  testedAsPrinted: {
    broken: [at(0, { ...held, 'test.heldRatio': 0.95 }, ev('noted', 'air'))],
    kept: [at(0, { ...held, 'test.heldRatio': 0.96 }, ev('noted', 'air'))],
  },
  testWritten: {
    broken: [at(0, { 'test.heldRatio': 0.95 }, ev('noted', 'low-gauge'))],
    kept: [at(0, { 'test.heldRatio': 0.96 }, ev('noted', 'low-gauge'))],
  },
  canMarked: byMeasure('cans.unmarkedCount', 1, 0, ev('can-opened', 'can-1')),
  canMarkRight: byMeasure('cans.markErrorKg', 0.021, 0.02, ev('can-marked', 'can-1')),
  canStored: byMeasure('cans.unstoredCount', 1, 0, ev('can-opened', 'can-1')),
  noSealer: {
    broken: [at(0), at(10, { 'sealer.fromCansKg': 0.0006 }, low)],
    kept: [at(0), at(10, { 'sealer.fromCansKg': 0.0005 }, low)],
  },
  oilKind: byMeasure('oil.wrongRatio', 0.11, 0.1, ev('can-opened', 'can-1')),
  oilAmount: byMeasure('oil.errorKg', 0.036, 0.035, ev('oil-filled', 'PAG')),
  ownerTold: { broken: [at(0)], kept: [at(0, {}, ev('told', 'charge-not-proven'))] },
  toldHonest: byMeasure('handOver.falseCount', 1, 0, ev('told', 'all-proven')),
  toldUnproven: byMeasure('handOver.unsaidCount', 1, 0, ev('told', 'all-proven')),
};
