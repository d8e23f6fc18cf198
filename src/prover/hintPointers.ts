/**
 * Which words of a hint point to which tests, by the channel that a test's id begins with; in the languages that scenarios
 * are told in. From the hints of the shipped library, read by hand: common practice, no source.
 */
const BOTH = ['both sides', 'both needles', 'both gauges', 'either side', 'ambos lados', 'ambas agujas'];

export const hintPointers: readonly (readonly [channel: string, phrases: readonly string[]])[] = [
  ['low-gauge', ['low side', 'low needle', ...BOTH, 'lado de baja', 'aguja de baja']],
  ['high-gauge', ['high side', 'high needle', ...BOTH, 'lado de alta', 'aguja de alta']],
  ['air@', ['vent', 'coil outlet', 'salida de aire', 'salidas de aire']],
  ['line@suction', ['suction line', 'suction pipe', 'línea de aspiración', 'tubo de aspiración']],
  ['line@discharge', ['discharge line', 'línea de descarga', 'tubo de descarga']],
  ['line@liquid', ['liquid line', 'liquid pipe', 'línea de líquido', 'tubo de líquido']],
  ['clutch.turning', ['hub', 'clutch', 'buje', 'embrague']],
  ['clutch.hubSpeedRatio', ['hub and pulley', 'slip', 'patina']],
  ['fan.', ['fan', 'ventilador']],
  ['vent.airflowRatio', ['hand at the vent', 'little comes out', 'sale poco aire']],
  ['blower.turning', ['blower', 'soplador']],
  ['sightGlass', ['sight glass', 'visor', 'mirilla']],
  ['dirt.condenser', ['front of the condenser', 'frente del condensador']],
  ['dirt.cabin-filter', ['filter', 'filtro']],
  ['gas-', ['identif', 'sample', 'muestra']],
  ['leak-search', ['sniff', 'soap', 'detector', 'bubbles', 'jabón', 'burbujas']],
  ['recovery-scale', ['recover', 'recuper']],
];
