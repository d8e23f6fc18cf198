/** The physics report of the two cars that the printed figures in this folder are for, held against those. */
import '../../src/layout/allLayouts';
import '../../src/loop/car/allVehicles';
import '../../src/refrigerant/allFluids';
import type { ReportInputs } from '../../src/export/report/inputs';
import { makeReport, type OnSection, REPORT_SECTIONS } from '../../src/export/report/makeReport';
import { vehicleOf } from '../../src/loop/car/vehicles';
import type { SignRow } from '../../src/plant/signs/signTable';
import chargeStudy from './loop/chargeStudy.json';
import orificeFlow from './loop/orificeFlow.json';
import bands from './loop/pressureBands.json';
import evacuation from './service/evacuation.json';
import recovery from './service/recovery.json';
import signs from './signTable.json';

export const reportInputs: ReportInputs = {
  vehicles: ['hatchback', 'sedan'].map(vehicleOf),
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
