/** A YAML file of shared/ or scenarios/, made into plain data when the project is built. */
declare module '*.yaml' {
  const data: unknown;
  export default data;
}

/** Hash of everything that decides how a log is played and scored; see shared/build/engineModule.ts. */
declare module 'virtual:engine-hash' {
  const hash: string;
  export default hash;
}
