/** A YAML file of shared/ or scenarios/, made into plain data when the project is built. */
declare module '*.yaml' {
  const data: unknown;
  export default data;
}
