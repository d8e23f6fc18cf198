/** What a scenario that does not ship goes by on the page: `own-` and the hash of what it says, as its logs carry it. */
const OWN = /^own-([0-9a-f]{16})$/;

export const ownId = (hash: string): string => `own-${hash}`;

/** Null for the id of a scenario that ships. */
export const hashOfOwn = (id: string): string | null => OWN.exec(id)?.[1] ?? null;
