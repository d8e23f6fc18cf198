/** The physics report of the shipped cars, held against the printed figures that stand in this folder. */
import '../../src/refrigerant/allFluids';
import type { ReportInputs } from '../../src/export/report/inputs';
import { makeReport, type OnSection, REPORT_SECTIONS } from '../../src/export/report/makeReport';
import { vehicleIds, vehicleOf } from '../../src/loop/car/vehicles';
import type { SignRow } from '../../src/plant/signs/signTable';
import chargeStudy from './loop/chargeStudy.json';
import orificeFlow from './loop/orificeFlow.json';
import bands from './loop/pressureBands.json';
import evacuation from './service/evacuation.json';
import recovery from './service/recovery.json';
import signs from './signTable.json';

export const reportInputs: ReportInputs = {
  vehicles: vehicleIds.map(vehicleOf),
  printed: {
    bands,
    chargeStudy,
    orificeFlow,
    evacuation,
    recovery,
    signs: { about: signs.about, rows: signs.rows as unknown as readonly SignRow[] },
  },
};

export const sections: readonly string[] = Object.keys(REPORT_SECTIONS);

export const physicsReport = (only?: readonly string[], onSection?: OnSection): string =>
  makeReport(reportInputs, only, onSection);
