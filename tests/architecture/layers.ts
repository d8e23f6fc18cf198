/** The folders of src by rank, lowest first. A file reaches lower ranks and its own folder, nothing else. */
export const LAYERS: readonly (readonly string[])[] = [
  ['units', 'numerics', 'words'],
  ['refrigerant', 'air'],
  ['loop', 'layout'],
  ['equipment'],
  ['faults'],
  ['plant'],
  ['session'],
  ['suspects', 'twin'],
  ['scoring'],
  ['prover'],
  ['instruments'],
  ['bay', 'panels', 'workshop', 'export'],
  ['app', 'cli'],
];

/** From here up there is a screen, a document, a clock on the wall. */
export const SCREEN_RANK = 10;

export const folderOf = (path: string): string | undefined => /^src\/([^/]+)\//.exec(path)?.[1];

/** Undefined for what is not under src, or in a folder no layer names. */
export function rankOf(path: string): number | undefined {
  const rank = LAYERS.findIndex((folders) => folders.includes(folderOf(path) ?? ''));
  return rank < 0 ? undefined : rank;
}

export const isBelowScreen = (path: string): boolean => (rankOf(path) ?? SCREEN_RANK) < SCREEN_RANK;
