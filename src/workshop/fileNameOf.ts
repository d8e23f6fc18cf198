/** The name a text is saved under: its id, or a plain one while its id is none. */
export const fileNameOf = (id: string | undefined): string =>
  `${id !== undefined && /^[a-z][a-z0-9-]{0,59}$/.test(id) ? id : 'scenario'}.yaml`;
