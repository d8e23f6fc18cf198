/**
 * In which lots the words are fetched: what the page shows first, what a job needs, what only a debrief or a
 * finding says, what see-inside says, what the bay in words says, what other pages say, what the workshop does, and
 * what only the command line says. A feature nobody names here belongs to the jobs.
 */
const FEATURES = {
  page: ['app', 'shelf', 'help', 'instrument', 'name'],
  findings: ['rules', 'debrief'],
  inside: ['inside'],
  written: ['words'],
  pages: ['carCard', 'drill'],
  workshop: ['workshop', 'workshopCar', 'check', 'prove', 'proveTests', 'lazyPlayers'],
  line: ['cli', 'verbs', 'codes', 'signs', 'report', 'states', 'loop', 'properties', 'suspects', 'list'],
} as const;

export const LOTS = ['page', 'job', 'findings', 'inside', 'written', 'pages', 'workshop', 'line'] as const;
export type Lot = (typeof LOTS)[number];

export function lotOf(feature: string): Lot {
  const named = Object.entries(FEATURES).find(([, features]) =>
    (features as readonly string[]).includes(feature),
  );
  return (named?.[0] as Lot | undefined) ?? 'job';
}
