/** Generated from shared/words/en/inside.yaml by `npm run words`; do not edit. */
export interface InsideWords {
  'inside.title': 'name';
  'inside.loop': never;
  'inside.diagram': never;
  'inside.both': never;
  'inside.loopOnly': never;
  'inside.diagramOnly': never;
  'inside.tableOnly': never;
  'inside.view': never;
  'inside.bay': never;
  'inside.liquid': never;
  'inside.mixture': never;
  'inside.vapour': never;
  'inside.table.caption': never;
  'inside.table.point': never;
  'inside.table.pressure': never;
  'inside.table.temperature': never;
  'inside.table.enthalpy': never;
  'inside.table.phase': never;
  'inside.point.p1': never;
  'inside.point.p2': never;
  'inside.point.p3': never;
  'inside.point.p4': never;
  'inside.phase.superheated': 'kelvin';
  'inside.phase.subcooled': 'kelvin';
  'inside.phase.mixture': 'share';
  'inside.phase.vapour': never;
  'inside.phase.liquid': never;
  'inside.enthalpyValue': 'number';
  'inside.says.title': never;
  'inside.says.resting': never;
  'inside.says.bubbles': 'share';
  'inside.says.fullLiquid': 'kelvin';
  'inside.says.dry': 'kelvin';
  'inside.says.wet': 'share';
}
